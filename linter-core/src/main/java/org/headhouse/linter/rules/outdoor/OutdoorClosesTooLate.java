package org.headhouse.linter.rules.outdoor;

import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.StormFigures;
import org.headhouse.linter.figures.StormSum;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.WeatherStation;
import org.headhouse.linter.source.Place;

/**
 * {@code outdoor.closes-too-late}: the times of MODBUS over Serial Line V1.02, added up; the limit
 * is the site's own.
 */
public final class OutdoorClosesTooLate implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "outdoor.closes-too-late",
          "Every unit closes its vents within the time that the site allows after a gust, and within its own close-time.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Setting<Interval> within =
        site.weatherStation()
            .optional()
            .map(WeatherStation::closeWithin)
            .orElseGet(() -> new Setting.Missing<>(site.weatherStation().place()));
    if (!within.isGiven() && site.commissioning().isMissing()) {
      return;
    }
    StormFigures storm = context.figures().storm();
    Interval allowed = within.orNull();
    for (StormSum sum : storm.sums()) {
      if (allowed != null && sum.time().totalSeconds() > allowed.seconds()) {
        report(sum, allowed, within.place(), storm, site, context);
      } else if (isSlowerThanWritten(sum)) {
        reportSlower(sum, context);
      }
    }
  }

  /** What counts is then what the watch showed. */
  private static boolean isSlowerThanWritten(StormSum sum) {
    Interval written = sum.unit().closeTime().orNull();
    Interval counted = sum.closing().orNull();
    return written != null && counted != null && counted.seconds() > written.seconds();
  }

  private static void report(
      StormSum sum,
      Interval allowed,
      Place within,
      StormFigures storm,
      Site site,
      RuleContext context) {
    Unit unit = sum.unit();
    ShorterStorm change = ShorterStorm.of(sum, allowed.seconds(), storm, site, context);
    Finding finding =
        context
            .finding(
                place(sum),
                new Message(
                    unit.called()
                        + (sum.time().isComplete() ? " can take " : " takes at least ")
                        + Shown.secondsBeside(allowed.seconds(), sum.time().totalSeconds())
                        + " from the gust to closed vents; the site allows "
                        + allowed.written(),
                    "vents that are open in the gust are wrecked and can injure people ("
                        + TimeParts.of(sum)
                        + ")",
                    change.remedy()))
            .related(within.region(), "the site allows " + allowed.written() + " here")
            .fixedBy(change.fix());
    String name = unit.name().orNull();
    context.report(name == null ? finding : finding.concerning(name));
  }

  /** The setting that takes most of the time, as far as the unit has it. */
  private static Place place(StormSum sum) {
    if (sum.time().isLongestOnDeadLine()) {
      return sum.unit().staleAfter().place();
    }
    return sum.closing().isGiven() ? sum.closing().place() : sum.unit().name().place();
  }

  private static void reportSlower(StormSum sum, RuleContext context) {
    Unit unit = sum.unit();
    String seen = sum.closing().optional().map(Interval::written).orElse("");
    String written = unit.closeTime().optional().map(Interval::written).orElse("");
    Finding finding =
        context
            .finding(
                sum.closing().place(),
                new Message(
                    "the vents of "
                        + unit.called()
                        + " took "
                        + seen
                        + " to close; close-time is "
                        + written,
                    "vents close later than anybody expects",
                    "find out why they are slower and repair it, then take the time again; or set"
                        + " close-time: "
                        + seen))
            .related(unit.closeTime().place().region(), "close-time is " + written + " here");
    String name = unit.name().orNull();
    context.report(name == null ? finding : finding.concerning(name));
  }
}
