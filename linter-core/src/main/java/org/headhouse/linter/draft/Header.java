package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/**
 * The first row of a list, which names its columns in any order. Columns of other names are left
 * alone: lists have remarks, prices, and dates.
 */
final class Header {
  private static final String USUAL = "name,cable-to-next,device-type";

  private final List<Cell> cells;
  private final Map<Column, Integer> places;
  private final List<Cell> others;

  private Header(List<Cell> cells, Map<Column, Integer> places, List<Cell> others) {
    this.cells = cells;
    this.places = places;
    this.others = others;
  }

  /** The header, or null where it lacks a column that is required; that is reported. */
  static @Nullable Header of(List<Cell> cells, Set<Column> required, Faults faults) {
    Map<Column, Integer> places = new EnumMap<>(Column.class);
    List<Cell> others = new ArrayList<>();
    for (int i = 0; i < cells.size(); i++) {
      Cell cell = cells.get(i);
      Column column = column(cell);
      if (column == null) {
        others.add(cell);
      } else if (places.putIfAbsent(column, i) != null) {
        faults.add(
            cell,
            "the heading " + cell.shown() + " names the column " + column.heading() + " again",
            "nobody can tell which of the two counts",
            "delete one of the columns, or give it another heading");
      }
    }
    Header header = new Header(cells, places, others);
    boolean complete = true;
    for (Column column : Column.values()) {
      complete &= places.containsKey(column) || header.mayLack(column, required, faults);
    }
    return complete ? header : null;
  }

  private static @Nullable Column column(Cell cell) {
    String normal = Column.normal(cell.text());
    for (Column column : Column.values()) {
      if (column.isNamed(normal)) {
        return column;
      }
    }
    return null;
  }

  private boolean mayLack(Column column, Set<Column> required, Faults faults) {
    Cell misspelt = misspelt(column);
    if (misspelt != null) {
      faults.add(
          misspelt,
          "the heading " + misspelt.shown() + " is not known",
          "the column would be left out",
          "write " + column.heading());
    } else if (required.contains(column)) {
      faults.add(
          cells.get(0),
          "no heading of the first row is \"" + column.heading() + "\"",
          "by their headings the columns are known",
          "write a first row such as " + USUAL);
    }
    return !required.contains(column);
  }

  private @Nullable Cell misspelt(Column column) {
    return others.stream()
        .filter(
            cell ->
                SpellingSuggester.suggest(Column.normal(cell.text()), column.headings())
                    .isPresent())
        .findFirst()
        .orElse(null);
  }

  /** The columns that the list has. */
  Set<Column> columns() {
    return places.keySet();
  }

  /** The headings of columns that are left alone. */
  List<String> unread() {
    return others.stream().map(Cell::text).filter(text -> !text.isEmpty()).toList();
  }

  int size() {
    return cells.size();
  }

  /** The cell of a row in a column; an empty one where the row or the list has none. */
  Cell cell(List<Cell> row, Column column) {
    Integer place = places.get(column);
    return place == null || place >= row.size() ? Cell.NOTHING : row.get(place);
  }

  /** The unit of what is written without one; empty where the heading names none. */
  String unit(Column column) {
    return column.unit(Column.normal(cell(cells, column).text()));
  }
}
