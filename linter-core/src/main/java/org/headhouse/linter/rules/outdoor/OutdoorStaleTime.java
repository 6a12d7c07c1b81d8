package org.headhouse.linter.rules.outdoor;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.StormSum;
import org.headhouse.linter.line.BroadcastLoad;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/** {@code outdoor.stale-time}: common practice, no source; the longest time is the site's own. */
public final class OutdoorStaleTime implements SiteRule {
  /** How many periods of the broadcast a unit waits at least (common practice, no source). */
  static final int LEAST_PERIODS = 3;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "outdoor.stale-time",
              "A unit with vents waits for the next reading no longer than the site allows, and for at least three broadcast periods.",
              Level.ERROR)
          .yieldingTo("traffic.overrun", "outdoor.closes-too-late");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    List<Unit> units = new ArrayList<>();
    for (Unit unit : site.units()) {
      if (unit.staleAfter().isGiven() && unit.isFollower() && site.movesVents(unit)) {
        units.add(unit);
      }
    }
    Traffic traffic = units.isEmpty() ? null : context.figures().traffic();
    if (units.isEmpty() || (traffic != null && traffic.utilisation() > 1)) {
      return;
    }
    StaleLimits limits = StaleLimits.of(site, traffic);
    units.forEach(unit -> check(unit, limits, site, traffic, context));
  }

  /**
   * What the stale times of all units are compared with.
   *
   * @param allowed the greatest age of a reading; null where {@code close-within} decides, or none
   * @param overdueSeconds until the last broadcast came, at worst; 0 where none is known
   * @param leastSeconds three periods of the broadcast; 0 where none is known
   */
  private record StaleLimits(
      @Nullable Interval allowed, double overdueSeconds, double leastSeconds) {

    static StaleLimits of(Site site, @Nullable Traffic traffic) {
      WeatherStation station = site.weatherStation().orNull();
      ReadingAge age = traffic == null ? null : traffic.age(0, true);
      BroadcastLoad broadcast = traffic == null ? null : traffic.broadcast();
      return new StaleLimits(
          station == null || !station.closeWithin().isMissing()
              ? null
              : station.maximumAge().orNull(),
          age == null ? 0 : age.overdueSeconds(),
          broadcast == null ? 0 : LEAST_PERIODS * broadcast.periodSeconds());
    }
  }

  private static void check(
      Unit unit, StaleLimits limits, Site site, @Nullable Traffic traffic, RuleContext context) {
    Interval staleAfter = unit.staleAfter().orNull();
    Interval allowed = limits.allowed();
    double overdue = limits.overdueSeconds();
    double least = limits.leastSeconds();
    if (staleAfter == null) {
      return;
    }
    if (allowed != null && overdue + staleAfter.seconds() > allowed.seconds()) {
      String longest = longest(allowed.seconds() - overdue, least);
      context.report(
          context
              .finding(
                  unit.staleAfter().place(),
                  new Message(
                      "on a dead line "
                          + unit.called()
                          + " keeps using a reading until it is "
                          + Shown.secondsBeside(allowed.seconds(), overdue + staleAfter.seconds())
                          + " old; the site allows "
                          + allowed.written(),
                      "until then its vents stay open, even in a storm ("
                          + Shown.seconds(overdue)
                          + " for the last broadcast + stale-after "
                          + staleAfter.written()
                          + ")",
                      longest == null
                          ? "broadcast more often, so that stale-after can be shorter"
                          : "set the unit and the file to stale-after: " + longest))
              .fixedBy(longest == null ? null : fix(unit, longest)));
    } else if (traffic != null && staleAfter.seconds() < least) {
      Limit limit = Limit.of(unit, site, context);
      if (!limit.isBroken()) {
        reportShort(unit, staleAfter, least, traffic, limit, context);
      }
    }
  }

  private static void reportShort(
      Unit unit,
      Interval staleAfter,
      double least,
      Traffic traffic,
      Limit limit,
      RuleContext context) {
    String shortest = Shown.atLeastSeconds(least);
    boolean does = Shown.atLeast(least) <= limit.longestSeconds();
    context.report(
        context
            .finding(
                unit.staleAfter().place(),
                new Message(
                    unit.called()
                        + " waits "
                        + staleAfter.written()
                        + " for the next reading, less than "
                        + LEAST_PERIODS
                        + " broadcast periods",
                    "a few lost messages shut its vents in calm weather, and people then"
                        + " disable the protection",
                    does
                        ? "set the unit and the file to stale-after: " + shortest + " or more"
                        : moreOften(staleAfter, traffic, limit.key())))
            .at(Level.WARNING)
            .fixedBy(does ? fix(unit, shortest) : null));
  }

  /** What is left where the site does not allow a longer wait. */
  private static String moreOften(Interval staleAfter, Traffic traffic, String key) {
    double period = Shown.atMost(staleAfter.seconds() / LEAST_PERIODS);
    String agree = "agree on a longer " + key + ", which a longer stale-after needs";
    return ShorterStorm.leavesRoom(period, traffic)
        ? "set the head unit and the file to every: "
            + Shown.atMostSeconds(period)
            + " for the broadcast, or "
            + agree
        : agree;
  }

  /**
   * What the site allows; where it says nothing, any wait.
   *
   * @param key where it says so
   * @param longestSeconds the longest {@code stale-after} that keeps it
   * @param isBroken whether the unit is over it as it is
   */
  private record Limit(String key, double longestSeconds, boolean isBroken) {

    static Limit of(Unit unit, Site site, RuleContext context) {
      WeatherStation station = site.weatherStation().orNull();
      ReadingAge age = context.figures().storm().age();
      double overdue = age == null ? 0 : age.overdueSeconds();
      Interval within = station == null ? null : station.closeWithin().orNull();
      Interval old = station == null ? null : station.maximumAge().orNull();
      if (within != null) {
        return of(unit, within.seconds(), overdue, context);
      }
      return old == null ? none() : new Limit("maximum-age", old.seconds() - overdue, false);
    }

    private static Limit of(Unit unit, double withinSeconds, double overdue, RuleContext context) {
      for (StormSum sum : context.figures().storm().sums()) {
        if (sum.unit().isSameItemAs(unit)) {
          double left = withinSeconds - sum.time().totalSeconds();
          return new Limit("close-within", left + sum.time().waitingSeconds() - overdue, left < 0);
        }
      }
      return none();
    }

    private static Limit none() {
      return new Limit("", Double.POSITIVE_INFINITY, false);
    }
  }

  /** The longest time that does, as people write it; null where it is under the least. */
  private static @Nullable String longest(double seconds, double least) {
    double written = Shown.atMost(seconds);
    return written > 0 && written >= least ? Shown.atMostSeconds(seconds) : null;
  }

  private static FixDraft fix(Unit unit, String staleAfter) {
    return FixDraft.proposed(
        "Set " + unit.called() + " to stale-after: " + staleAfter,
        Edit.write(unit.staleAfter().place(), staleAfter));
  }
}
