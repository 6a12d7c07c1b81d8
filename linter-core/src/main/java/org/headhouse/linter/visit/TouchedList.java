package org.headhouse.linter.visit;

import java.util.List;
import java.util.Set;
import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.draft.CsvReader;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.draft.ListBytes;
import org.headhouse.linter.source.Limits;

/** Distinguishes a list that was filled in on a visit from one that nobody has touched. */
public final class TouchedList {
  /** The headings under which a list has something as it was written. */
  private static final Set<String> WRITTEN = Set.of("what", "where", "acceptable");

  private TouchedList() {}

  /**
   * Whether somebody may have filled in a list: what was seen on site cannot be seen again. One
   * that is not as it was written, such as in other columns or not in UTF-8, counts as filled in.
   */
  public static boolean mayBe(byte[] list) {
    ListBytes.Read read = ListBytes.read("", Utf16.inUtf8(list), Limits.DEFAULT);
    if (read.refused() != null) {
      return true;
    }
    Faults faults = new Faults(read.source());
    List<List<Cell>> rows = CsvReader.read(read.source(), faults).rows();
    if (rows.isEmpty()) {
      return !faults.isEmpty();
    }
    VisitColumns columns = VisitColumns.of(rows.get(0), faults);
    return columns == null
        || !faults.isEmpty()
        || !columns.unread().isEmpty()
        || rows.subList(1, rows.size()).stream().anyMatch(row -> isFilled(row, columns));
  }

  /** Whether a row has something in any other cell, also in one without a heading, or is new. */
  private static boolean isFilled(List<Cell> row, VisitColumns columns) {
    boolean isBlank = row.stream().allMatch(Cell::isEmpty);
    return !isBlank
        && (!columns.isOnlyUnder(WRITTEN, row)
            || !VisitReader.isUnderstood(columns.cell(row, "what")));
  }
}
