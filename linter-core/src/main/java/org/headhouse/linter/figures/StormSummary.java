package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.ClosingTime;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * From the gust to closed vents, without the site that it was computed from.
 *
 * @param closeWithinSeconds what the site allows; null where it sets no limit
 * @param units those that move vents, in the order of the chain
 */
public record StormSummary(@Nullable Double closeWithinSeconds, List<OfUnit> units) {

  /**
   * One unit.
   *
   * @param name or its place in the chain where it has none
   * @param time with its parts
   */
  public record OfUnit(String name, ClosingTime time) {}

  public StormSummary {
    units = List.copyOf(units);
  }

  /** Null where no unit moves vents. */
  static @Nullable StormSummary of(Site site, StormFigures storm) {
    return storm.sums().isEmpty()
        ? null
        : new StormSummary(
            site.weatherStation()
                .optional()
                .flatMap(station -> station.closeWithin().optional())
                .map(Interval::seconds)
                .orElse(null),
            storm.sums().stream().map(StormSummary::ofUnit).toList());
  }

  private static OfUnit ofUnit(StormSum sum) {
    return new OfUnit(
        sum.unit().name().or("item " + (sum.unit().index() + 1) + " of the chain"), sum.time());
  }
}
