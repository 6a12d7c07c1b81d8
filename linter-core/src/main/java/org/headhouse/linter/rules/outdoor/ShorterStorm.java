package org.headhouse.linter.rules.outdoor;

import java.util.OptionalDouble;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.StormFigures;
import org.headhouse.linter.figures.StormSum;
import org.headhouse.linter.line.ClosingTime;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.line.TrafficSizing;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What makes a unit close in time.
 *
 * @param remedy with the values to set
 * @param fix null where somebody has to choose, or to work on the vents
 */
record ShorterStorm(String remedy, @Nullable FixDraft fix) {
  /** Over which a gust is averaged: WMO-No. 8, chapter 5. */
  private static final double GUST_SECONDS = 3;

  private static final String OTHERWISE = ", or agree on a longer close-within";

  /** The least of what is possible: first the waiting, then the broadcast, then the vents. */
  static ShorterStorm of(
      StormSum sum, double allowedSeconds, StormFigures storm, Site site, RuleContext context) {
    ClosingTime time = sum.time();
    double left = allowedSeconds - (time.totalSeconds() - time.waitingSeconds());
    ReadingAge age = storm.age();
    if (age != null && sum.waitsForBroadcast() && left > age.overdueSeconds()) {
      Traffic traffic = context.figures().traffic();
      int lost = context.sitePolicy().lostBroadcasts();
      double period = age.periodsSeconds() / (lost + 1);
      double staleAfter = Shown.atMost(left - age.overdueSeconds());
      if (age.totalSeconds() <= left
          && sum.closesOnDeadLine()
          && staleAfter >= OutdoorStaleTime.LEAST_PERIODS * period) {
        return ofStaleAfter(sum.unit(), Shown.atMostSeconds(staleAfter));
      }
      boolean waitsTooLong = time.isLongestOnDeadLine();
      int periods = waitsTooLong ? Math.max(lost + 1, OutdoorStaleTime.LEAST_PERIODS) : lost + 1;
      double longest =
          Shown.atMost(
              Math.min((left - age.overdueSeconds()) / periods, byPatience(sum, waitsTooLong)));
      if (traffic != null && longest < period && leavesRoom(longest, traffic)) {
        return new ShorterStorm(
            "set the head unit and the file to every: "
                + Shown.atMostSeconds(longest)
                + " for the broadcast"
                + (waitsTooLong
                    ? ", and the unit to stale-after: " + Shown.atMostSeconds(staleAfter)
                    : "")
                + OTHERWISE,
            null);
      }
    }
    return new ShorterStorm(ofVents(time, allowedSeconds) + OTHERWISE, null);
  }

  /** A wait that stays as it is has to have its periods of the broadcast. */
  private static double byPatience(StormSum sum, boolean waitsTooLong) {
    Interval staleAfter = sum.unit().staleAfter().orNull();
    return waitsTooLong || !sum.closesOnDeadLine() || staleAfter == null
        ? Double.POSITIVE_INFINITY
        : staleAfter.seconds() / OutdoorStaleTime.LEAST_PERIODS;
  }

  private static ShorterStorm ofStaleAfter(Unit unit, String staleAfter) {
    return new ShorterStorm(
        "set the unit and the file to stale-after: " + staleAfter,
        FixDraft.proposed(
            "Set " + unit.called() + " to stale-after: " + staleAfter,
            Edit.write(unit.staleAfter().place(), staleAfter)));
  }

  /** Whether the broadcast fits into the period beside all else on the line. */
  static boolean leavesRoom(double period, Traffic traffic) {
    OptionalDouble shortest = TrafficSizing.shortestBroadcastPeriodSeconds(traffic, 1);
    return period > 0 && shortest.isPresent() && period >= shortest.getAsDouble();
  }

  private static String ofVents(ClosingTime time, double allowedSeconds) {
    double over = time.totalSeconds() - allowedSeconds;
    String averaging = ofAveraging(time, over);
    Double closing = time.closeSeconds();
    if (closing != null && closing - over >= 1) {
      return "let the vents close in "
          + Shown.atMostSeconds(closing - over)
          + ", delays and stages included, or "
          + (averaging == null ? "average the wind over less" : averaging);
    }
    return averaging == null
        ? "average the wind over less, and let the vents close faster"
        : averaging;
  }

  /** Null where less averaging than a gust lasts would be needed. */
  private static @Nullable String ofAveraging(ClosingTime time, double over) {
    Double averaging = time.averagingSeconds();
    return averaging == null || averaging - over < GUST_SECONDS
        ? null
        : "average the wind over " + Shown.atMostSeconds(averaging - over) + " at most";
  }
}
