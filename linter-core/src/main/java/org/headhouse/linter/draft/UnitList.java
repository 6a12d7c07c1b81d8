package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/** Makes units of the rows of a list, and reports what no line can have. */
final class UnitList {
  private final Header header;
  private final DeviceTypes types;
  private final SpellingSuggester nearestType;
  private final ExcludedAddresses keptFree;
  private final Faults faults;
  private final Map<String, Integer> names = new HashMap<>();

  private UnitList(Header header, DeviceTypes types, ExcludedAddresses keptFree, Faults faults) {
    this.header = header;
    this.types = types;
    this.nearestType = new SpellingSuggester(types.ids());
    this.keptFree = keptFree;
    this.faults = faults;
  }

  /** The units in the order of the list; whole only where no fault is reported. */
  static ListedUnits of(
      SourceText source, DeviceTypes types, ExcludedAddresses keptFree, Faults faults) {
    List<List<Cell>> rows = CsvReader.rows(source, faults);
    if (rows.isEmpty()) {
      if (faults.isEmpty()) {
        tellOfTooFew(Region.START_OF_FILE, 0, faults);
      }
      return ListedUnits.NONE;
    }
    Header header = Header.of(rows.get(0), faults);
    if (header == null) {
      return ListedUnits.NONE;
    }
    List<List<Cell>> unitRows = rows.subList(1, rows.size());
    // A quote that is never closed hides the rows behind it.
    if (unitRows.size() < 2 && faults.isEmpty()) {
      int end = rows.get(rows.size() - 1).get(0).start();
      tellOfTooFew(source.at(end), unitRows.size(), faults);
    }
    return new ListedUnits(
        new UnitList(header, types, keptFree, faults).units(unitRows), header.unread());
  }

  private static void tellOfTooFew(Region region, int number, Faults faults) {
    faults.add(
        region,
        number == 0 ? "the list has no unit" : "the list has 1 unit",
        "a line joins a head unit and at least one follower",
        "write one row for each unit under the headings, the head unit first");
  }

  private List<ListedUnit> units(List<List<Cell>> rows) {
    int[] addresses =
        BusAddress.STANDARD.addresses().filter(address -> !keptFree.contains(address)).toArray();
    if (rows.size() > addresses.length) {
      int kept = BusAddress.STANDARD.to() - addresses.length;
      faults.add(
          rows.get(addresses.length).get(0),
          "the list has " + rows.size() + " units",
          "the addresses of a line end at "
              + BusAddress.STANDARD.to()
              + (kept == 0 ? "" : ", and " + kept + " of them are kept free"),
          "divide the units into several lines, each with a head unit of its own");
      return List.of();
    }
    List<ListedUnit> units = new ArrayList<>();
    for (int i = 0; i < rows.size(); i++) {
      units.add(unit(rows.get(i), i, addresses[i], i == rows.size() - 1));
    }
    return units;
  }

  private ListedUnit unit(List<Cell> row, int index, int address, boolean last) {
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
    String name = name(row, index);
    String typeId = typeId(header.cell(row, Column.TYPE));
    return new ListedUnit(name, address, length(row, last), typeId, type(typeId));
  }

  private String name(List<Cell> row, int index) {
    Cell cell = header.cell(row, Column.NAME);
    String name = cell.text();
    if (cell.isEmpty()) {
      faults.add(
          row.get(0),
          "the unit has no name",
          "people tell units apart by their names",
          "write a name into the column name, or delete the row");
      return name;
    }
    if (name.codePointCount(0, name.length()) > Format.LONGEST_TEXT) {
      faults.add(
          cell,
          "the name " + cell.shown() + " has more than " + Format.LONGEST_TEXT + " characters",
          "no display shows it",
          "shorten it");
    }
    Integer first = names.putIfAbsent(name.toLowerCase(Locale.ROOT), index + 1);
    if (first != null) {
      faults.add(
          cell,
          "the name " + cell.shown() + " is used twice, first for unit " + first + " of the list",
          "nobody can tell which of the two is meant",
          "give one of the two a name of its own");
    }
    return name;
  }

  private @Nullable Length length(List<Cell> row, boolean last) {
    Cell cell = header.cell(row, Column.LENGTH);
    if (cell.isEmpty()) {
      return null;
    }
    Length length = LengthCell.read(cell, header.lengthUnit(), faults);
    if (last && length != null && length.metres() > 0) {
      faults.add(
          cell,
          "the last unit has " + length.written() + " of cable to the next",
          "nothing follows it: a row is missing, or lengths are those from the unit before",
          "add the unit that follows, or write each length beside the unit that the cable starts"
              + " from");
    }
    return last ? null : length;
  }

  private @Nullable String typeId(Cell cell) {
    if (cell.isEmpty()) {
      return null;
    }
    String id = cell.text();
    boolean isId = Format.isId(id);
    // Without device types nobody knows which there are.
    boolean isKnowable = types.source() != null && types.isComplete();
    if (!isId || (isKnowable && !types.ids().contains(id))) {
      faults.add(
          cell,
          "the device type " + cell.shown() + " is not known",
          "polarity, load and communication module depend on it",
          remedy(id));
      return null;
    }
    return id;
  }

  private String remedy(String id) {
    if (types.ids().isEmpty()) {
      return "write an id of lower-case letters, digits and hyphens, or leave the cell empty";
    }
    return "write "
        + nearestType.suggest(id).orElse("one of " + String.join(", ", types.ids()))
        + ", or add the type to the device types";
  }

  private DeviceType type(@Nullable String id) {
    return types.get(id);
  }
}
