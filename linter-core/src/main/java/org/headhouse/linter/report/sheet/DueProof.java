package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.time.Period;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;

/**
 * A site whose line is due to be proved again.
 *
 * @param when in words
 */
record DueProof(String link, String title, String customer, String when) {
  /** Time enough to arrange a visit (common practice, no source). */
  static final Period AHEAD = Period.ofMonths(3);

  /**
   * Lines that are not proved, whatever the period; then those that are due, the earliest first.
   */
  static List<DueProof> of(List<IndexRow> rows, LocalDate today, Period every) {
    List<DueProof> due = new ArrayList<>();
    rows.stream()
        .filter(IndexRow::isUnproved)
        .forEach(row -> due.add(of(row, "now: it is not proved, as its certificate says")));
    if (every.isZero()) {
      return due;
    }
    rows.stream()
        .filter(row -> row.nextProof() != null)
        .filter(row -> !day(row).isAfter(today.plus(AHEAD)))
        .sorted(Comparator.comparing(DueProof::day))
        .forEach(row -> due.add(of(row, words(row, today))));
    return due;
  }

  private static LocalDate day(IndexRow row) {
    return Objects.requireNonNull(row.nextProof());
  }

  private static String words(IndexRow row, LocalDate today) {
    return row.isOverdue(today) ? "overdue since " + row.nextProof() : "due on " + row.nextProof();
  }

  private static DueProof of(IndexRow row, String when) {
    return new DueProof(row.link(), row.title(), row.customer(), when);
  }
}
