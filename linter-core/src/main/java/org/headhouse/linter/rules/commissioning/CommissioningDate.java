package org.headhouse.linter.rules.commissioning;

import java.time.LocalDate;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Commissioning;
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
    Commissioning record = site.commissioning().orNull();
    LocalDate date = record == null ? null : record.date().orNull();
    if (record != null && date != null && date.isAfter(context.today())) {
      context.report(
          record.date().place(),
          new Message(
              "the record is dated " + date + ", after today",
              "a visit that has not been proves nothing",
              "write the day of the visit"));
    }
  }
}
