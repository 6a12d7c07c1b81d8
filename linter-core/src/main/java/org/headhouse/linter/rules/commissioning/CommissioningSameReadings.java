package org.headhouse.linter.rules.commissioning;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.change.NewRecords;
import org.headhouse.linter.change.RecordContents;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/** {@code commissioning.same-readings}: common practice, no source. */
public final class CommissioningSameReadings implements ChangeRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "commissioning.same-readings",
          "A later record has the measurements and observations of its own day.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site before, Site after, RuleContext context) {
    Commissioning was = before.commissioning().orNull();
    Commissioning record = after.commissioning().orNull();
    if (was == null || record == null || !after.stage().is(Stage.COMMISSIONED)) {
      return;
    }
    Set<RecordContents> known =
        was.records().stream().map(RecordContents::of).collect(Collectors.toSet());
    NewRecords later = NewRecords.between(was, record);
    List<ProvingRecord> records = new ArrayList<>(later.renewals());
    if (later.first()) {
      records.add(0, record.first());
    }
    for (ProvingRecord one : records) {
      RecordContents contents = RecordContents.of(one);
      if (!contents.isEmpty() && known.contains(contents)) {
        report(one, context);
      }
    }
  }

  private static void report(ProvingRecord record, RuleContext context) {
    context.report(
        record.day().place(),
        new Message(
            "the later record has exactly the readings and lists of an earlier one",
            "a meter hardly ever shows every value again, so this looks like an old record with"
                + " a new date",
            "prove the line again, and then enter the new readings; if only a part was proved"
                + " again, keep the old record with its date and add an entry to renewed"));
  }
}
