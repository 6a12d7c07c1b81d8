package org.headhouse.linter.rules.change;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.change.Difference;
import org.headhouse.linter.change.DueProofs;
import org.headhouse.linter.change.NewRecords;
import org.headhouse.linter.change.ReprovingCheck;
import org.headhouse.linter.change.SiteDifferences;
import org.headhouse.linter.proof.GivenProofs;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.proof.ProofWords;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;

/** {@code change.record-kept}. */
public final class ChangeRecordKept implements ChangeRule {
  private static final String WITHOUT = "the record is renewed after a change without ";

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "change.record-kept",
              "After a change of a commissioned site, everything that it affects is proved"
                  + " again, and the record is renewed.",
              Level.ERROR)
          .yieldingTo("commissioning.date");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public boolean asksForProofs() {
    return true;
  }

  @Override
  public void check(Site before, Site after, RuleContext context) {
    Commissioning was = before.commissioning().orNull();
    Commissioning record = after.commissioning().orNull();
    if (was == null
        || record == null
        || !before.wasCommissioned()
        || !after.stage().is(Stage.COMMISSIONED)) {
      return;
    }
    LocalDate date = record.date().orNull();
    NewRecords later = NewRecords.between(was, record);
    // A first record of a later day is judged by the rules on records, which ask for all of it.
    if (date == null || later.first() || record.renewed().isFaulty() || isOutOfOrder(record)) {
      return;
    }
    if (later.renewals().isEmpty() && !before.stage().is(Stage.COMMISSIONED)) {
      reportResumed(record, context);
      return;
    }
    List<Difference> differences = SiteDifferences.between(before, after);
    if (!ReprovingCheck.isDue(differences)) {
      return;
    }
    List<Proof> due = DueProofs.of(after, differences);
    if (later.renewals().isEmpty()) {
      reportKept(
          record, changed(differences), due, DueProofs.concernsAll(after, differences), context);
    } else {
      Set<Proof> given = GivenProofs.of(after, later.renewals());
      List<Proof> missing = due.stream().filter(one -> !given.contains(one)).toList();
      if (!missing.isEmpty()) {
        reportMissing(later.renewals(), missing, context);
      }
    }
  }

  /** {@code commissioning.date} reports it, and such an entry may be the one that is missing. */
  private static boolean isOutOfOrder(Commissioning record) {
    List<LocalDate> days = new ArrayList<>();
    for (ProvingRecord one : record.records()) {
      LocalDate day = one.dayOrNull();
      if (day != null) {
        days.add(day);
      }
    }
    return !days.stream().sorted().toList().equals(days);
  }

  /**
   * The change may have been made, and proved, before the revision that is compared with: from
   * there it cannot be judged.
   */
  private static void reportResumed(Commissioning record, RuleContext context) {
    ProvingRecord latest = latest(record);
    context.report(
        context
            .finding(
                latest.day().place(),
                new Message(
                    "the line was planned for a change, but its record is still that of "
                        + day(latest),
                    "what was measured and seen before a change proves nothing about it",
                    "compare with the revision that was proved last; prove again whatever the"
                        + " change affects,"
                        + " and add an entry to renewed with the day of that visit"))
            .at(Level.WARNING));
  }

  private static ProvingRecord latest(Commissioning record) {
    List<ProvingRecord> records = record.records();
    return records.get(records.size() - 1);
  }

  private static String day(ProvingRecord record) {
    LocalDate day = record.dayOrNull();
    return day == null ? "before" : day.toString();
  }

  /** The file of a site may be the same while a type of its devices is not. */
  private static String changed(List<Difference> differences) {
    return differences.stream()
            .filter(ReprovingCheck::concerns)
            .allMatch(Difference.TypeSet.class::isInstance)
        ? "what the device types say of the line has changed"
        : "the line has changed";
  }

  private static void reportKept(
      Commissioning record, String changed, List<Proof> due, boolean all, RuleContext context) {
    ProvingRecord latest = latest(record);
    context.report(
        context
            .finding(
                latest.day().place(),
                new Message(
                    changed + ", but its record is still that of " + day(latest),
                    "what was measured and seen then proves nothing about the change",
                    proving(due, all)
                        + " add an entry to renewed with the day of that visit; until then set stage:"
                        + " planned"))
            .about(Proof.cases(due)));
  }

  private static String proving(List<Proof> due, boolean all) {
    if (due.isEmpty()) {
      return "look at what was changed on site, and then";
    }
    return all
        ? "measure the whole line and see every unit again, and then"
        : "prove again " + ProofWords.of(due) + "; then";
  }

  private static void reportMissing(
      List<ProvingRecord> renewals, List<Proof> missing, RuleContext context) {
    context.report(
        context
            .finding(
                renewals.get(renewals.size() - 1).day().place(),
                new Message(
                    ProofWords.fact(WITHOUT, missing),
                    "the change may have affected it, and nobody has checked",
                    "prove "
                        + ProofWords.remedied(WITHOUT, missing)
                        + " too, and then add it to this entry; until then set stage: planned"))
            .about(Proof.cases(missing)));
  }
}
