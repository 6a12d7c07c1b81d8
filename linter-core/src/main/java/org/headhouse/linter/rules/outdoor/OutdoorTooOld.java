package org.headhouse.linter.rules.outdoor;

import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.ReadingAge;
import org.headhouse.linter.line.TimeoutNeed;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.WeatherStation;
import org.jspecify.annotations.Nullable;

/** {@code outdoor.too-old}: the times of MODBUS over Serial Line V1.02, added up. */
public final class OutdoorTooOld implements SiteRule {
  /** Makes {@link SitePolicy#lostBroadcasts}. */
  public static final Parameter<Integer> LOST =
      new Parameter<>(
          "lost",
          "how many broadcasts in a row may be lost; used wherever the age of readings is computed",
          ParameterType.within(ParameterType.count(), Integer::doubleValue, "0", "100"),
          String.valueOf(ReadingAge.USUAL_LOST));

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "outdoor.too-old",
              "No reading at a follower becomes older than the site allows, even if a broadcast is lost or one unit is silent.",
              Level.ERROR,
              LOST)
          .yieldingTo("traffic.overrun");

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
    int lost = context.sitePolicy().lostBroadcasts();
    ReadingAge age = traffic.age(lost, false);
    ReadingAge ageOneSilent = traffic.age(lost, true);
    if (age == null || ageOneSilent == null || ageOneSilent.totalSeconds() <= allowed.seconds()) {
      return;
    }
    boolean always = age.totalSeconds() > allowed.seconds();
    YoungerReadings change = YoungerReadings.of(traffic, site, allowed.seconds(), lost, true);
    if (change == null && always) {
      change = YoungerReadings.of(traffic, site, allowed.seconds(), lost, false);
    }
    Finding finding =
        context
            .finding(
                station.maximumAge().place(),
                message(
                    always ? age : ageOneSilent, !always, lost, allowed, context.figures(), change))
            .fixedBy(change == null ? null : change.fix(site));
    context.report(always ? finding : finding.at(Level.WARNING));
  }

  private static Message message(
      ReadingAge age,
      boolean oneSilent,
      int lost,
      Interval allowed,
      LineFigures figures,
      @Nullable YoungerReadings change) {
    return new Message(
        (oneSilent ? "with one unit silent a reading can be " : "a reading can be ")
            + Shown.secondsBeside(allowed.seconds(), age.totalSeconds())
            + " old; the site allows "
            + allowed.written(),
        "vents follow out-of-date wind (" + TimeParts.of(age, lost, oneSilent) + ")",
        change == null ? otherwise(figures, oneSilent) : change.remedy());
  }

  /** What to do where neither the period nor the rate helps. */
  private static String otherwise(LineFigures figures, boolean oneSilent) {
    Traffic traffic = figures.traffic();
    if (traffic == null || traffic.polls().isEmpty()) {
      return "send fewer registers, or agree on a longer maximum-age";
    }
    TimeoutNeed need = figures.timeoutNeed();
    return oneSilent
        ? "shorten the timeout of the polls, or allow fewer retries"
            + (need == null
                ? ""
                : " (a timeout of at least " + Shown.atLeastSeconds(need.totalSeconds()) + ")")
            + ", or agree on a longer maximum-age"
        : "read fewer registers at a time, or agree on a longer maximum-age";
  }
}
