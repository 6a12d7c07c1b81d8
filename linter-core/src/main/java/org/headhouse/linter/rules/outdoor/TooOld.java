package org.headhouse.linter.rules.outdoor;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.TrafficFit;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.line.TrafficSizing;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.WeatherStation;

/** {@code outdoor.too-old}: the times of MODBUS over Serial Line V1.02, added up. */
public final class TooOld implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "outdoor.too-old",
          "No reading becomes older than the site allows, one unit being silent.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    WeatherStation station = site.weatherStation().orNull();
    Interval allowed = station == null ? null : station.maximumAge().orNull();
    Traffic traffic = context.figures().traffic();
    if (station == null || allowed == null || traffic == null || traffic.utilisation() > 1) {
      return;
    }
    Double age = traffic.worstAgeSeconds();
    Double ageOneSilent = traffic.worstAgeOneSilentSeconds();
    if (age == null || ageOneSilent == null || ageOneSilent <= allowed.seconds()) {
      return;
    }
    boolean always = age > allowed.seconds();
    Finding finding =
        context.finding(
            station.maximumAge().place(),
            new Message(
                always
                    ? "a reading becomes "
                        + Shown.seconds(age)
                        + " old as computed, over the "
                        + allowed.written()
                        + " that the site allows"
                    : "a reading becomes "
                        + Shown.seconds(ageOneSilent)
                        + " old while one unit is silent, over the "
                        + allowed.written()
                        + " that the site allows",
                "a follower would move its vents by a wind that was",
                remedy(traffic, site, allowed, !always)));
    context.report(always ? finding : finding.at(Level.WARNING));
  }

  /**
   * The period, the rate, or both that make the readings young enough; while one unit is silent as
   * well, where that can be had.
   */
  private static String remedy(Traffic traffic, Site site, Interval allowed, boolean oneSilent) {
    String change = change(traffic, site, allowed, true);
    if (change.isEmpty() && !oneSilent) {
      change = change(traffic, site, allowed, false);
    }
    if (!change.isEmpty()) {
      return change;
    }
    if (traffic.polls() == null) {
      return "send fewer registers, or allow a greater maximum-age";
    }
    return oneSilent
        ? "shorten the timeout of the polls or their retries, or allow a greater maximum-age"
        : "read fewer registers at a time, or allow a greater maximum-age";
  }

  /** Empty where there is none. */
  private static String change(Traffic traffic, Site site, Interval allowed, boolean oneSilent) {
    OptionalDouble period = fittingPeriod(traffic, allowed, oneSilent);
    if (period.isPresent()) {
      return "write every: " + Shown.atMostSeconds(period.getAsDouble()) + " for the broadcast";
    }
    OptionalInt baud =
        TrafficFit.nextBaud(traffic, site, other -> isYoung(other, allowed, oneSilent));
    if (baud.isPresent()) {
      return "set all units and the line to " + baud.getAsInt() + " bit/s";
    }
    OptionalInt both =
        TrafficFit.nextBaud(
            traffic, site, other -> fittingPeriod(other, allowed, oneSilent).isPresent());
    return both.isEmpty()
        ? ""
        : "set all units and the line to "
            + both.getAsInt()
            + " bit/s, and write every: "
            + Shown.atMostSeconds(
                fittingPeriod(traffic.withBaud(both.getAsInt()), allowed, oneSilent).orElseThrow())
            + " for the broadcast";
  }

  /** The longest period that does; as people write it, it must still leave room on the line. */
  private static OptionalDouble fittingPeriod(
      Traffic traffic, Interval allowed, boolean oneSilent) {
    OptionalDouble longest =
        TrafficSizing.longestBroadcastPeriodSeconds(traffic, allowed.seconds(), oneSilent);
    OptionalDouble shortest = TrafficSizing.shortestBroadcastPeriodSeconds(traffic, 1);
    if (longest.isEmpty() || shortest.isEmpty()) {
      return OptionalDouble.empty();
    }
    double written = Shown.atMost(longest.getAsDouble());
    return written > 0 && written >= shortest.getAsDouble() ? longest : OptionalDouble.empty();
  }

  private static boolean isYoung(Traffic traffic, Interval allowed, boolean oneSilent) {
    Double age = oneSilent ? traffic.worstAgeOneSilentSeconds() : traffic.worstAgeSeconds();
    return age != null && age <= allowed.seconds();
  }
}
