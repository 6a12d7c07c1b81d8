package org.headhouse.linter.rules.commissioning;

import java.time.LocalDate;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.RecordDate;
import org.headhouse.linter.site.Site;

/** {@code commissioning.date}. */
public final class CommissioningDate implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "commissioning.date", "The record is not dated in the future.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning commissioning = site.commissioning().orNull();
    if (commissioning != null) {
      commissioning.records().forEach(record -> check(record, context));
    }
  }

  private static void check(ProvingRecord record, RuleContext context) {
    RecordDate written = record.day().orNull();
    LocalDate date = written == null ? null : written.day();
    if (date != null && date.isAfter(context.today())) {
      context.report(
          record.day().place(),
          new Message(
              "the record is dated " + date + ", after today",
              "a visit that has not been proves nothing",
              "write the day of the visit"));
    }
  }
}
