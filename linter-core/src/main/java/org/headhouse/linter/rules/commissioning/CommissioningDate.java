package org.headhouse.linter.rules.commissioning;

import java.time.LocalDate;
import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;

/** {@code commissioning.date}. */
public final class CommissioningDate implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "commissioning.date",
          "The record is not dated in the future, and its renewals are not dated before it.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning commissioning = site.commissioning().orNull();
    LocalDate latest = null;
    for (ProvingRecord record :
        commissioning == null ? List.<ProvingRecord>of() : commissioning.records()) {
      LocalDate day = record.dayOrNull();
      if (day != null && day.isAfter(context.today())) {
        reportFuture(record, day, context);
      } else if (day != null && latest != null && day.isBefore(latest)) {
        reportOrder(record, day, latest, context);
      } else if (day != null) {
        latest = day;
      }
    }
  }

  private static void reportFuture(ProvingRecord record, LocalDate day, RuleContext context) {
    context.report(
        record.day().place(),
        new Message(
            "the record is dated " + day + ", in the future",
            "a visit that is still to come proves nothing",
            "enter the day of the visit"));
  }

  private static void reportOrder(
      ProvingRecord record, LocalDate day, LocalDate latest, RuleContext context) {
    context.report(
        record.day().place(),
        new Message(
            "the record is renewed on " + day + ", before " + latest + ", which it renews",
            "what was proved before a change proves nothing about the line after it",
            "enter the day of the visit, and put the entries of renewed in the order of their days"));
  }
}
