package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.ClosingTime;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * From the gust to closed vents, at worst: with one polled unit silent, and as many broadcasts lost
 * in a row as the policy says. Nothing that is not known is taken for 0; a sum says whether it is
 * complete.
 *
 * @param age of the readings; null without a broadcast, and where the traffic is not understood or
 *     cannot be
 * @param pollsKnown whether the file gives all polls, so that the age is no less than it says
 * @param sums of the units that move vents, in the order of the chain
 */
@Internal
public record StormFigures(@Nullable ReadingAge age, boolean pollsKnown, List<StormSum> sums) {

  public StormFigures {
    sums = List.copyOf(sums);
  }

  static StormFigures of(Site site, SitePolicy policy, @Nullable Traffic traffic) {
    ReadingAge age =
        traffic == null || traffic.utilisation() > 1
            ? null
            : traffic.age(policy.lostBroadcasts(), true);
    boolean pollsKnown = !asksUnknown(site);
    Double averaging =
        site.weatherStation()
            .optional()
            .map(WeatherStation::averaging)
            .map(StormFigures::seconds)
            .orElse(null);
    WatchedClosings watched = new WatchedClosings(site);
    List<StormSum> sums = new ArrayList<>();
    for (Unit unit : site.units()) {
      if (site.movesVents(unit) && (unit.isHead() || unit.isFollower())) {
        Setting<Interval> closing = watched.closing(unit);
        ClosingTime time = time(unit, averaging, age, seconds(closing));
        boolean open = unit.isFollower() && !pollsKnown;
        sums.add(new StormSum(unit, closing, open ? time.leftOpen() : time));
      }
    }
    return new StormFigures(age, pollsKnown, sums);
  }

  private static ClosingTime time(
      Unit unit, @Nullable Double averaging, @Nullable ReadingAge age, @Nullable Double closing) {
    if (unit.isHead()) {
      return ClosingTime.ofHeadUnit(averaging, closing);
    }
    return StormSum.closesOnDeadLine(unit)
        ? ClosingTime.ofFollower(averaging, age, seconds(unit.staleAfter()), closing)
        : ClosingTime.ofFollowerThatStays(averaging, age, closing);
  }

  /** Whether software asks over the line, and the file does not say how much or how often. */
  private static boolean asksUnknown(Site site) {
    Supervision supervision = site.supervision().orNull();
    return supervision != null
        && supervision.link().optional().filter(link -> link.loadsLine()).isPresent()
        && supervision.polling().isMissing();
  }

  private static @Nullable Double seconds(Setting<Interval> setting) {
    Interval interval = setting.orNull();
    return interval == null ? null : interval.seconds();
  }
}
