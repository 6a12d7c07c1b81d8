package org.headhouse.linter.visit;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.proof.VisitEntry;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.visit.RecordedValues.Comparison;

/**
 * What a visit adds to the records of a site.
 *
 * @param proofs what was seen and measured; the wind limit of vents that shut is among them
 * @param open comments on what was not seen, which the check reports; they are written also where
 *     nothing is proved
 * @param notes comments on the visit, of one line each
 * @param left comments that are not written, as there is nothing new for them to stand at
 */
record NewRecord(
    VisitRow.Signed signature,
    List<VisitRow> proofs,
    List<String> open,
    List<String> notes,
    List<String> left) {
  NewRecord {
    proofs = List.copyOf(proofs);
    open = List.copyOf(open);
    notes = List.copyOf(notes);
    left = List.copyOf(left);
  }

  /** Whether a record is to be written. */
  boolean isWritten() {
    return !proofs.isEmpty();
  }

  /**
   * Leaves out what the records of the same day and person have already; what they have otherwise
   * is reported, as a list changes no record.
   *
   * @param isComment whether a line is a comment of those records already
   */
  static NewRecord of(Visit visit, VisitedSite site, Predicate<String> isComment, Faults faults) {
    RecordedValues recorded = new RecordedValues(site.site(), sameVisit(visit, site));
    RecordedValues later = site.recordedAfter(visit.signature().day());
    List<VisitRow> proofs = new ArrayList<>();
    List<String> open = new ArrayList<>();
    List<String> notes = new ArrayList<>();
    List<String> left = new ArrayList<>();
    for (VisitRow row : visit.rows()) {
      Comparison comparison =
          row.found() == Found.Nothing.NOTHING ? Comparison.NEW : recorded.compare(row);
      if (comparison == Comparison.OTHER) {
        report(row, visit, recorded.shown(row), faults);
      } else if (comparison == Comparison.SAME) {
        if (!row.remark().isEmpty() && !isComment.test(row.remark())) {
          left.add(row.called() + ": " + row.remark());
        }
      } else if (row.proves() || isLimitOf(row, visit)) {
        proofs.add(row);
      } else if (row.found() == Found.Seen.NO && !later.isSeen(row)) {
        open.add(row.openPoint(visit.signature()));
      } else if (!isComment.test(row.note())) {
        notes.add(row.note());
      }
    }
    boolean proves = proofs.stream().anyMatch(VisitRow::proves);
    if (!proves) {
      left.addAll(notes);
    }
    open.removeAll(site.openPoints());
    return new NewRecord(
        visit.signature(), proves ? proofs : List.of(), open, proves ? notes : List.of(), left);
  }

  /** The records of a site that have the day and the person of a visit. */
  static List<ProvingRecord> sameVisit(Visit visit, VisitedSite site) {
    return site.records().stream()
        .filter(one -> visit.signature().day().equals(one.dayOrNull()))
        .filter(one -> one.by().is(visit.signature().by()))
        .toList();
  }

  private static boolean isLimitOf(VisitRow row, Visit visit) {
    return row.entry() == VisitEntry.WIND_LIMIT
        && visit.rows().stream()
            .anyMatch(
                other ->
                    other.entry() == VisitEntry.STORM_RESPONSE
                        && other.item() == row.item()
                        && other.proves());
  }

  private static void report(VisitRow row, Visit visit, String recorded, Faults faults) {
    faults.add(
        row.cell(),
        "the record of that day has " + recorded + ", and not " + row.cell().shown(),
        "a list never changes what "
            + visit.signature().by()
            + " recorded on "
            + visit.signature().day(),
        "correct the cell, or empty it and correct the record by hand");
  }
}
