package org.headhouse.linter.rules.change;

import java.time.LocalDate;
import java.util.List;
import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.ReprovingCheck;
import org.headhouse.linter.change.SiteDifferences;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/** {@code change.record-kept}. */
public final class ChangeRecordKept implements ChangeRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "change.record-kept",
          "The record of a commissioned site is renewed when its wiring, addresses or sources change.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site before, Site after, RuleContext context) {
    Commissioning was = before.commissioning().orNull();
    Commissioning record = after.commissioning().orNull();
    if (was == null
        || record == null
        || !before.stage().is(Stage.COMMISSIONED)
        || !after.stage().is(Stage.COMMISSIONED)) {
      return;
    }
    LocalDate date = record.date().orNull();
    if (date == null || !was.date().is(date)) {
      return;
    }
    List<Difference> concerned =
        SiteDifferences.between(before, after).stream().filter(ReprovingCheck::concerns).toList();
    if (!concerned.isEmpty()) {
      context.report(
          record.date().place(),
          new Message(
              "the line is changed, and its record is still that of " + date,
              "what was measured and seen then says nothing of the line as it is now",
              "measure again, see the outdoor readings at every follower, and write the day of that"
                  + " visit; until then write stage: planned"));
    }
  }
}
