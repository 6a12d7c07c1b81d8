package org.headhouse.linter.visit;

import static java.util.stream.Collectors.joining;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.draft.SiteUpdate.Remark;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.site.Stage;

/** What somebody has to know before a record is taken. */
final class VisitRemarks {
  private static final String SEEN_BEFORE =
      ". A record says that it was seen before: set stage: planned until it is proved again";

  private VisitRemarks() {}

  /** All remarks, what can hurt first. */
  static List<Remark> of(VisitList list, List<NewRecord> records, VisitedSite site) {
    List<Remark> remarks = new ArrayList<>(unseen(list, site));
    for (NewRecord record : records) {
      record.left().forEach(note -> remarks.add(new Remark(Level.WARNING, "Not written: " + note)));
    }
    boolean isWritten = records.stream().anyMatch(NewRecord::isWritten);
    if (records.isEmpty()) {
      list.rows()
          .forEach(row -> remarks.add(new Remark(Level.WARNING, "Not written: " + row.note())));
    }
    if (!isWritten && !site.source().text().contains(list.reason())) {
      remarks.add(new Remark(Level.WARNING, "Not written: " + list.reason()));
    }
    if (list.blank() > 0) {
      remarks.add(
          new Remark(
              Level.NOTE,
              list.blank() == 1
                  ? "1 row is blank, and counts as not seen"
                  : list.blank() + " rows are blank, and count as not seen"));
    }
    if (isWritten && !site.site().stage().is(Stage.COMMISSIONED)) {
      remarks.add(
          new Remark(
              Level.NOTE,
              "The stage stays as it is: once the line is as the site says, set stage:"
                  + " commissioned, and the check says what the record lacks"));
    }
    if (!list.unread().isEmpty()) {
      remarks.add(
          new Remark(
              Level.NOTE,
              "Columns of the list that were not read: "
                  + list.unread().stream().collect(joining(", "))));
    }
    return List.copyOf(remarks);
  }

  /** What was not seen, each with what the records say of it. */
  private static List<Remark> unseen(VisitList list, VisitedSite site) {
    RecordedValues recorded = new RecordedValues(site.site(), site.records());
    Map<LocalDate, RecordedValues> later = new HashMap<>();
    List<Remark> remarks = new ArrayList<>();
    for (VisitRow row : list.rows()) {
      VisitRow.Signed signature = row.signature();
      if (row.found() != Found.Seen.NO || signature == null) {
        continue;
      }
      boolean isSeenSince = later.computeIfAbsent(signature.day(), site::recordedAfter).isSeen(row);
      remarks.add(
          isSeenSince
              ? new Remark(Level.NOTE, "Not seen then, but on a later day: " + row.called())
              : new Remark(
                  Level.WARNING,
                  "Not seen: " + row.called() + (recorded.isSeen(row) ? SEEN_BEFORE : "")));
    }
    return remarks;
  }
}
