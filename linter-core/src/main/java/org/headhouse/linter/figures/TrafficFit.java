package org.headhouse.linter.figures;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.headhouse.linter.line.LengthLimit;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.line.TrafficSizing;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.stability.Internal;

/**
 * Changes that would make the traffic of a site fit.
 *
 * @param place the period of the part that takes the greatest share of the time
 * @param part {@code the broadcast}, {@code the polls}, or those of a piece of equipment
 * @param periodSeconds the shortest period of that part that fits; empty where none does
 * @param baud the next rate that fits and that all device types have; empty where none does
 */
@Internal
public record TrafficFit(Place place, String part, OptionalDouble periodSeconds, OptionalInt baud) {

  private static final String BROADCAST = "the broadcast";

  /**
   * The changes that keep the line in use for at most a share of the time.
   *
   * @param most the share, at most 1
   */
  public static TrafficFit within(double most, Traffic traffic, Site site) {
    OptionalInt baud = nextBaud(traffic, site, other -> other.utilisation() <= most);
    int equipment = mostPolledEquipment(traffic);
    double equipmentShare =
        equipment < 0 ? 0 : traffic.equipmentPolls().get(equipment).share(traffic.serial());
    if (equipmentShare > Math.max(traffic.broadcastShare(), traffic.zonePollShare())) {
      return ofEquipment(equipment, most, traffic, site, baud);
    }
    Place line = site.line().place();
    if (traffic.zonePollShare() > traffic.broadcastShare()) {
      Place place =
          site.supervision()
              .optional()
              .flatMap(supervision -> supervision.polling().optional())
              .map(polling -> polling.every().place())
              .orElse(line);
      return new TrafficFit(
          place,
          "the polls",
          TrafficSizing.shortestPollPeriodSeconds(traffic, traffic.zonePolls(), most),
          baud);
    }
    Place place =
        site.line()
            .optional()
            .flatMap(settings -> settings.broadcast().optional())
            .map(broadcast -> broadcast.every().place())
            .orElse(line);
    return new TrafficFit(
        place, BROADCAST, TrafficSizing.shortestBroadcastPeriodSeconds(traffic, most), baud);
  }

  /** The piece of equipment that takes most of the time, by its number; -1 without any. */
  private static int mostPolledEquipment(Traffic traffic) {
    return IntStream.range(0, traffic.equipmentPolls().size())
        .boxed()
        .max(
            Comparator.comparingDouble(
                number -> traffic.equipmentPolls().get(number).share(traffic.serial())))
        .orElse(-1);
  }

  private static TrafficFit ofEquipment(
      int number, double most, Traffic traffic, Site site, OptionalInt baud) {
    Equipment equipment = SitePolls.polledEquipment(site).get(number);
    Place place =
        equipment
            .polled()
            .optional()
            .map(polled -> polled.every().place())
            .orElse(equipment.place());
    return new TrafficFit(
        place,
        "the polls of " + equipment.called(),
        TrafficSizing.shortestPollPeriodSeconds(
            traffic, List.of(traffic.equipmentPolls().get(number)), most),
        baud);
  }

  /**
   * The next standard rate at which the traffic fits, that all known types can be set to, and at
   * which no segment is too long.
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

  static boolean allHave(Site site, int baud) {
    for (ChainItem item : site.items()) {
      List<Setting<Integer>> rates = item.type().baudRates().orNull();
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
    return "set "
        + (part.equals(BROADCAST) ? "the head unit" : "the client")
        + " and the file to every: "
        + Shown.atLeastSeconds(periodSeconds.getAsDouble())
        + " for "
        + part
        + (rate.isEmpty() ? "" : ", or " + rate);
  }
}
