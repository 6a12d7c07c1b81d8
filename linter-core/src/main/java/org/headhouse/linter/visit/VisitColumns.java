package org.headhouse.linter.visit;

import static java.util.stream.Collectors.toSet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.headhouse.linter.draft.Cell;
import org.headhouse.linter.draft.Faults;
import org.headhouse.linter.proof.VisitEntry;
import org.jspecify.annotations.Nullable;

/** The first row of a list from a visit, which names its columns in any order. */
final class VisitColumns {
  private final Map<String, Integer> places;
  private final int size;
  private final List<String> unread;

  private VisitColumns(Map<String, Integer> places, int size, List<String> unread) {
    this.places = places;
    this.size = size;
    this.unread = unread;
  }

  /** The columns; null where one is missing or there twice, which is reported. */
  static @Nullable VisitColumns of(List<Cell> headings, Faults faults) {
    Map<String, Integer> places = new LinkedHashMap<>();
    List<String> unread = new ArrayList<>();
    boolean sound = true;
    for (int i = 0; i < headings.size(); i++) {
      Cell heading = headings.get(i);
      String name = heading.text().toLowerCase(Locale.ROOT);
      if (!VisitEntry.COLUMNS.contains(name)) {
        unread.add(heading.text());
      } else if (places.putIfAbsent(name, i) != null) {
        sound = false;
        faults.add(
            heading,
            "the heading " + heading.shown() + " is there twice",
            "nobody can tell which of the two columns counts",
            "delete one of them, or give it another heading");
      }
    }
    for (String name : VisitEntry.COLUMNS) {
      if (!places.containsKey(name)) {
        sound = false;
        faults.add(
            headings.get(0),
            "no heading of the first row is \"" + name + "\"",
            "by their headings the columns are known",
            "keep the first row as the goal report wrote it: "
                + String.join(",", VisitEntry.COLUMNS));
      }
    }
    unread.removeIf(String::isEmpty);
    return sound ? new VisitColumns(places, headings.size(), unread) : null;
  }

  /** The headings of columns that are left alone. */
  List<String> unread() {
    return unread;
  }

  /** The cell of a row under a heading; an empty one at its end where the row is shorter. */
  Cell cell(List<Cell> row, String heading) {
    int place = places.getOrDefault(heading, row.size());
    int end = row.get(row.size() - 1).end();
    return place < row.size() ? row.get(place) : new Cell("", end, end);
  }

  /** Whether a row has nothing but what is under some headings. */
  boolean isOnlyUnder(Set<String> headings, List<Cell> row) {
    Set<Integer> under = headings.stream().map(places::get).collect(toSet());
    return IntStream.range(0, row.size()).allMatch(i -> row.get(i).isEmpty() || under.contains(i));
  }

  /** Whether a row has a cell under no heading, as one that was divided has; that is reported. */
  boolean reportsDivided(List<Cell> row, Faults faults) {
    for (Cell cell : row.subList(Math.min(size, row.size()), row.size())) {
      if (!cell.isEmpty()) {
        faults.add(
            cell,
            "the cell " + cell.shown() + " has no heading",
            "a cell of this row may have been divided",
            "put cells with a comma or a semicolon in them into quotes");
        return true;
      }
    }
    return false;
  }
}
