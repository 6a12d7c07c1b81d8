package org.headhouse.linter.rules.commissioning;

import org.headhouse.linter.proof.Signature;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.RecordDate;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Place;

/** {@code commissioning.placeholder}: common practice, no source. */
public final class CommissioningPlaceholder implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "commissioning.placeholder",
          "The record says who proved the line, and on which day.",
          Level.ERROR);

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

  /** One result a record: whoever signs it fills in both. */
  private static void check(ProvingRecord record, RuleContext context) {
    String by = record.by().orNull();
    RecordDate day = record.day().orNull();
    if (by != null && Signature.isStandIn(by)) {
      report(record.by().place(), "the record is signed by \"" + by + "\"", context);
    } else if (day != null && day.day() == null) {
      report(record.day().place(), "the record has no day", context);
    }
  }

  private static void report(Place place, String fact, RuleContext context) {
    context.report(
        place,
        new Message(
            fact,
            "nobody can be asked about a proof that nobody signed",
            "until the line is proved, set stage: planned and remove the record; after the"
                + " visit, set date to its day and by to the name of the person who proved the"
                + " line"));
  }
}
