package org.headhouse.linter.rules.commissioning;

import java.time.LocalDate;
import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Meter;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;

/** {@code commissioning.meter-expired}: common practice, no source. */
public final class CommissioningMeterExpired implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "commissioning.meter-expired",
              "The calibration of the meter was still valid on the day of the record.",
              Level.WARNING)
          .yieldingTo("commissioning.date");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning commissioning = site.commissioning().orNull();
    for (ProvingRecord record :
        commissioning == null ? List.<ProvingRecord>of() : commissioning.records()) {
      Meter meter = record.meter().orNull();
      LocalDate day = record.dayOrNull();
      // Of a day that has not been, commissioning.date reports the cause.
      if (meter != null
          && day != null
          && !day.isAfter(context.today())
          && record.wasMeterExpired()) {
        report(meter.calibratedUntil(), day, context);
      }
    }
  }

  private static void report(Setting<LocalDate> until, LocalDate day, RuleContext context) {
    context.report(
        until.place(),
        new Message(
            "the calibration of the meter ended on "
                + until.or(day)
                + ", before the record of "
                + day,
            "a meter that is off shows an acceptable value on a line with a fault",
            "measure again with a calibrated meter, and then add its readings to renewed;"
                + " correct the day here only if it was entered wrongly"));
  }
}
