package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The sites of one customer in the index, worst first.
 *
 * @param title the customer, or why there is none
 */
record IndexGroup(String title, List<IndexRow> rows) {
  private static final String NOT_READABLE = "Not readable";
  private static final String NO_CUSTOMER = "No customer in the file";

  IndexGroup {
    rows = List.copyOf(rows);
  }

  /**
   * Worst first: what cannot be read, then by the number of errors, then by the worst figure, then
   * what is overdue, then by the number of warnings and of notes. Groups come in the order of their
   * worst sites; of equal ones by name.
   */
  static List<IndexGroup> of(List<IndexRow> rows, LocalDate today) {
    Comparator<IndexRow> worstFirst = worstFirst(today);
    Map<String, List<IndexRow>> byTitle = new LinkedHashMap<>();
    for (IndexRow row : rows) {
      byTitle.computeIfAbsent(title(row), title -> new ArrayList<>()).add(row);
    }
    List<IndexGroup> groups = new ArrayList<>();
    byTitle.forEach(
        (title, ofTitle) ->
            groups.add(
                new IndexGroup(
                    title,
                    ofTitle.stream().sorted(worstFirst.thenComparing(IndexRow::title)).toList())));
    groups.sort(
        Comparator.comparing((IndexGroup group) -> group.rows.get(0), worstFirst)
            .thenComparing(IndexGroup::title));
    return List.copyOf(groups);
  }

  private static String title(IndexRow row) {
    if (row.link().isEmpty()) {
      return NOT_READABLE;
    }
    return row.customer().isEmpty() ? NO_CUSTOMER : row.customer();
  }

  private static Comparator<IndexRow> worstFirst(LocalDate today) {
    return Comparator.comparing((IndexRow row) -> !row.link().isEmpty())
        .thenComparing(Comparator.comparingInt(IndexRow::errors).reversed())
        .thenComparing(IndexRow::worst)
        .thenComparing(row -> !row.isOverdue(today))
        .thenComparing(Comparator.comparingInt(IndexRow::warnings).reversed())
        .thenComparing(Comparator.comparingInt(IndexRow::notes).reversed());
  }
}
