package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/**
 * The first row of a list, which names its columns in any order. Columns of other names are left
 * alone: lists have remarks, prices, and dates.
 */
final class Header {
  private static final Cell NOTHING = new Cell("", 0, 0);
  private static final String USUAL = "name,cable-to-next,device-type";

  private final List<Cell> cells;
  private final Map<Column, Integer> places;
  private final List<Cell> others;

  private Header(List<Cell> cells, Map<Column, Integer> places, List<Cell> others) {
    this.cells = cells;
    this.places = places;
    this.others = others;
  }

  /** The header, or null where it lacks what every list needs; that is reported. */
  static @Nullable Header of(List<Cell> cells, Faults faults) {
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
    return isComplete(places, cells, others, faults) ? new Header(cells, places, others) : null;
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

  private static boolean isComplete(
      Map<Column, Integer> places, List<Cell> cells, List<Cell> others, Faults faults) {
    boolean complete = true;
    for (Column column : Column.values()) {
      if (places.containsKey(column)) {
        continue;
      }
      Cell misspelt = misspelt(column, others);
      if (misspelt != null) {
        faults.add(
            misspelt,
            "the heading " + misspelt.shown() + " is not known",
            "the column would be left out",
            "write " + column.heading());
      } else if (column != Column.TYPE) {
        faults.add(
            cells.get(0),
            "no heading of the first row is \"" + column.heading() + "\"",
            "by their headings the columns are known",
            "write a first row such as " + USUAL);
      }
      complete &= column == Column.TYPE;
    }
    return complete;
  }

  private static @Nullable Cell misspelt(Column column, List<Cell> others) {
    return others.stream()
        .filter(
            cell ->
                SpellingSuggester.suggest(Column.normal(cell.text()), column.headings())
                    .isPresent())
        .findFirst()
        .orElse(null);
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
    return place == null || place >= row.size() ? NOTHING : row.get(place);
  }

  /** The unit of lengths that are written without one; empty where the heading names none. */
  String lengthUnit() {
    return Column.unit(Column.normal(cell(cells, Column.LENGTH).text()));
  }
}
