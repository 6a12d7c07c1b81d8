package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Quantities;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/** Makes items of the rows of a list, and reports what no line can have. */
final class ListReader {
  private final Header header;
  private final CellReader cells;
  private final DeviceTypes types;
  private final Faults faults;
  private final Map<String, Integer> names = new HashMap<>();

  private ListReader(Header header, CellReader cells, DeviceTypes types, Faults faults) {
    this.header = header;
    this.cells = cells;
    this.types = types;
    this.faults = faults;
  }

  /**
   * The items in the order of the list; whole only where no fault is reported.
   *
   * @param required the columns without which nothing can be made of the list
   */
  static ListedChain read(
      SourceText source, Set<Column> required, DeviceTypes types, Faults faults) {
    CsvReader.Table table = CsvReader.read(source, faults);
    List<List<Cell>> rows = table.rows();
    if (rows.isEmpty()) {
      if (faults.isEmpty()) {
        reportTooFew(Region.START_OF_FILE, 0, faults);
      }
      return ListedChain.NONE;
    }
    Header header = Header.of(rows.get(0), required, faults);
    if (header == null) {
      return ListedChain.NONE;
    }
    List<List<Cell>> itemRows = rows.subList(1, rows.size());
    DecimalSigns signs = DecimalSigns.of(measured(header, itemRows), table.separator());
    CellReader cells = new CellReader(header, types, signs, faults);
    ListReader reader = new ListReader(header, cells, types, faults);
    ListedChain chain = new ListedChain(reader.items(itemRows), header.columns(), header.unread());
    long units = chain.items().stream().filter(ListedItem::isUnit).count();
    // A quote that is never closed hides the rows after it.
    if (units < 2 && faults.isEmpty()) {
      int end = rows.get(rows.size() - 1).get(0).start();
      reportTooFew(source.at(end), units, faults);
    }
    return chain;
  }

  private static List<Cell> measured(Header header, List<List<Cell>> rows) {
    List<Cell> measured = new ArrayList<>();
    for (Column column : Column.values()) {
      if (column.measure() != Column.Measure.NONE && header.columns().contains(column)) {
        rows.forEach(row -> measured.add(header.cell(row, column)));
      }
    }
    return measured;
  }

  private static void reportTooFew(Region region, long number, Faults faults) {
    faults.add(
        region,
        number == 0 ? "the list has no unit" : "the list has 1 unit",
        "a line joins a head unit and at least one follower",
        "write one row for each unit under the headings, the head unit first");
  }

  private List<ListedItem> items(List<List<Cell>> rows) {
    if (rows.size() > Format.MOST_ITEMS) {
      faults.add(
          rows.get(Format.MOST_ITEMS).get(0),
          "the list has " + rows.size() + " rows",
          "a line has at most " + Format.MOST_ITEMS + " items, and fewer addresses",
          "divide the units into several lines, each with a head unit of its own");
      return List.of();
    }
    List<ListedItem> items = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      items.add(item(rows.get(i), i, i > 0 && i == rows.size() - 1));
    }
    return items;
  }

  private ListedItem item(List<Cell> row, int index, boolean last) {
    for (int i = header.size(); i < row.size(); i++) {
      if (!row.get(i).isEmpty()) {
        faults.add(
            row.get(i),
            "the cell " + row.get(i).shown() + " has no heading",
            "a cell of this row may have been divided",
            "put cells with a comma or a semicolon in them into quotes");
        break;
      }
    }
    Cell roleCell = header.cell(row, Column.ROLE);
    ItemKind kind = cells.kind(roleCell);
    String name = name(row, index, kind);
    Map<Column, String> values = new EnumMap<>(Column.class);
    if (kind == ItemKind.UNIT) {
      Role role = cells.role(roleCell);
      put(values, Column.ROLE, role == null ? null : role.word());
    }
    for (Column column : Column.values()) {
      if (column != Column.NAME && column != Column.ROLE) {
        put(values, column, cells.value(header.cell(row, column), column, kind));
      }
    }
    if (last) {
      lastHasNoCable(row, values);
    }
    return new ListedItem(row.get(0), kind, name, values, types.get(values.get(Column.TYPE)));
  }

  private static void put(Map<Column, String> values, Column column, @Nullable String value) {
    if (value != null) {
      values.put(column, value);
    }
  }

  private String name(List<Cell> row, int index, ItemKind kind) {
    Cell cell = header.cell(row, Column.NAME);
    String name = cell.text();
    if (cell.isEmpty()) {
      faults.add(
          row.get(0),
          "the " + kind.word() + " has no name",
          "people tell units apart by their names",
          "write a name into the column name, or delete the row");
      return name;
    }
    cells.isTooLong(cell, "the name ");
    Integer first = names.putIfAbsent(name.toLowerCase(Locale.ROOT), index + 1);
    if (first != null) {
      faults.add(
          cell,
          "the name " + cell.shown() + " is used twice, first for unit " + first + " of the list",
          "nobody can tell which of the two is meant",
          "give one of the two another name");
    }
    return name;
  }

  private void lastHasNoCable(List<Cell> row, Map<Column, String> values) {
    String written = values.remove(Column.LENGTH);
    Length length = written == null ? null : Quantities.length(written);
    if (length != null && length.metres() > 0) {
      faults.add(
          header.cell(row, Column.LENGTH),
          "the last unit has " + length.written() + " of cable to the next",
          "nothing follows it: a row is missing, or lengths are those from the unit before",
          "add the unit that follows, or write each length beside the unit that the cable starts"
              + " from");
    }
  }
}
