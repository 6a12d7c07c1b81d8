package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.figures.SegmentBias;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.IdleBias;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;

/**
 * Whose supply feeds the bias that other receivers depend on: once it fails, an idle pair is
 * undriven, and they may take noise for messages. A receiver of which nothing is known counts as
 * one that needs bias.
 */
final class BiasFeed {
  private BiasFeed() {}

  /** The items that have such bias, along the chain; a repeater is no house. */
  static List<ChainItem> of(Site site) {
    return site.items().stream()
        .filter(item -> !(item instanceof Repeater) && isAt(item, site))
        .toList();
  }

  /** Whether others depend on the bias at an item. */
  static boolean isAt(ChainItem item, Site site) {
    LineSettings line = site.line().orNull();
    return line != null
        && hasBias(item, line.bias().or(List.of()))
        && site.segments().stream()
            .anyMatch(
                segment -> hasBias(item, biasOf(segment, site, line)) && needs(segment, item));
  }

  private static boolean hasBias(ChainItem item, List<Bias> all) {
    return all.stream().anyMatch(bias -> bias.at().isGiven() && item.name().is(bias.at().or("")));
  }

  private static List<Bias> biasOf(Segment segment, Site site, LineSettings line) {
    return SegmentBias.of(segment, segment.last().index() == site.items().size() - 1, line);
  }

  private static boolean needs(Segment segment, ChainItem feeding) {
    return segment.contains(feeding)
        && segment.items().stream()
            .anyMatch(
                item ->
                    !item.isSameItemAs(feeding)
                        && !item.idleBias(segment.side(item)).is(IdleBias.NOT_NEEDED));
  }
}
