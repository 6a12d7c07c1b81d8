package org.headhouse.linter.figures;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import org.headhouse.linter.line.LengthLimit;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.line.TrafficSizing;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * What would make the traffic of a site fit.
 *
 * @param place the period of the part that takes the greater share of the time
 * @param part {@code the polls} or {@code the broadcast}
 * @param periodSeconds the shortest period of that part that does; empty where none does
 * @param baud the next rate that does and that all types of device have; empty where none does
 */
@Internal
public record TrafficFit(Place place, String part, OptionalDouble periodSeconds, OptionalInt baud) {

  /**
   * What keeps the line in use for at most a share of the time.
   *
   * @param most the share, at most 1
   */
  public static TrafficFit within(double most, Traffic traffic, Site site) {
    OptionalInt baud = nextBaud(traffic, site, other -> other.utilisation() <= most);
    Place line = site.line().place();
    if (traffic.pollShare() > traffic.broadcastShare()) {
      Place place =
          site.supervision()
              .optional()
              .flatMap(supervision -> supervision.polling().optional())
              .map(polling -> polling.every().place())
              .orElse(line);
      return new TrafficFit(
          place, "the polls", TrafficSizing.shortestPollPeriodSeconds(traffic, most), baud);
    }
    Place place =
        site.line()
            .optional()
            .flatMap(settings -> settings.broadcast().optional())
            .map(broadcast -> broadcast.every().place())
            .orElse(line);
    return new TrafficFit(
        place, "the broadcast", TrafficSizing.shortestBroadcastPeriodSeconds(traffic, most), baud);
  }

  /**
   * The next standard rate at which the traffic fits, that all known types can be set to, and that
   * no segment becomes too long for.
   */
  public static OptionalInt nextBaud(Traffic traffic, Site site, Predicate<Traffic> fits) {
    return TrafficSizing.nextBaud(
        traffic,
        other ->
            fits.test(other)
                && allHave(site, other.serial().baud())
                && allReach(site, other.serial().baud()));
  }

  private static boolean allReach(Site site, int baud) {
    double metres = LengthLimit.optimisticMetres(baud);
    return site.segments().stream()
        .noneMatch(
            segment -> new SegmentLine(segment, site, SitePolicy.DEFAULT).isLongerThan(metres));
  }

  private static boolean allHave(Site site, int baud) {
    for (Unit unit : site.units()) {
      List<Setting<Integer>> rates = unit.type().baudRates().orNull();
      if (rates != null && rates.stream().noneMatch(rate -> rate.is(baud))) {
        return false;
      }
    }
    return true;
  }

  /** The change in words, with the values to write. */
  public String remedy() {
    String rate =
        baud.isPresent() ? "set all units and the line to " + baud.getAsInt() + " bit/s" : "";
    if (periodSeconds.isEmpty()) {
      return rate.isEmpty() ? "send fewer registers, or lengthen both periods" : rate;
    }
    return "write every: "
        + Shown.atLeastSeconds(periodSeconds.getAsDouble())
        + " for "
        + part
        + (rate.isEmpty() ? "" : ", or " + rate);
  }
}
