package org.headhouse.linter.draft;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.Conductor;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Run;
import org.headhouse.linter.site.StaleAction;
import org.headhouse.linter.site.SurgeProtection;
import org.headhouse.linter.site.Vents;
import org.headhouse.linter.site.Word;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/** Reads the cell of one column; what is not understood is a fault, and never a guess. */
final class CellReader {
  private static final Pattern ADDRESS = Pattern.compile("[0-9]{1,3}");
  private static final Pattern BETWEEN_CONDUCTORS = Pattern.compile("[\\s,;/+&]+");
  private static final Pattern AND = Pattern.compile("-?[+&]-?");

  private final Header header;
  private final DeviceTypes types;
  private final SpellingSuggester nearestType;
  private final QuantityCell quantities;
  private final Faults faults;

  CellReader(Header header, DeviceTypes types, DecimalSigns signs, Faults faults) {
    this.header = header;
    this.types = types;
    this.nearestType = new SpellingSuggester(types.ids());
    this.quantities = new QuantityCell(signs, faults);
    this.faults = faults;
  }

  /**
   * The value as a site has it, not yet in quotes; null where nothing is said, or what is said is
   * not understood, which is reported.
   */
  @Nullable String value(Cell cell, Column column, ItemKind kind) {
    if (cell.saysNothing()) {
      return null;
    }
    if (!column.isOf(kind)) {
      faults.add(
          cell,
          "a " + kind.word() + " has no " + column.heading(),
          "the cell would be left out",
          "empty it, or correct the role of the row");
      return null;
    }
    return switch (column) {
      case NAME -> throw new IllegalArgumentException("a name is read with its row");
      case ROLE -> throw new IllegalArgumentException("a role is read by itself");
      case ADDRESS -> address(cell);
      case TYPE -> typeId(cell);
      case SERIAL, FIRMWARE -> text(cell, column);
      case MODULE -> word(cell, column, CommModule.values());
      case CONDUCTORS -> conductors(cell);
      case PAIR -> word(cell, column, Pair.values());
      case TERMINATION -> termination(cell, kind);
      case VENTS -> word(cell, column, Vents.values());
      case STALE -> word(cell, column, StaleAction.values());
      case STUB, LENGTH -> quantities.length(cell, header.unit(column));
      case RUN -> word(cell, column, Run.values());
      case PROTECTION -> word(cell, column, SurgeProtection.values());
    };
  }

  /** The kind that a cell of the column of roles says; a unit where it says nothing. */
  ItemKind kind(Cell cell) {
    String normal = Column.normal(cell.text());
    return Arrays.stream(ItemKind.values())
        .filter(kind -> kind.word().equals(normal))
        .findFirst()
        .orElse(ItemKind.UNIT);
  }

  /** The role of a unit, or null where the cell says none. */
  @Nullable Role role(Cell cell) {
    String normal = Column.normal(cell.text());
    if (cell.saysNothing() || normal.equals(ItemKind.UNIT.word())) {
      return null;
    }
    for (Role role : Role.values()) {
      if (normal.equals(role.word()) || normal.equals(role.word() + "-unit")) {
        return role;
      }
    }
    faults.add(
        cell,
        "the role " + cell.shown() + " is not known",
        "who asks, who answers and who has an address depend on it",
        "write one of "
            + Stream.concat(Arrays.stream(Role.values()), Arrays.stream(ItemKind.values()))
                .map(Word::word)
                .collect(Collectors.joining(", ")));
    return null;
  }

  private @Nullable String address(Cell cell) {
    int address = ADDRESS.matcher(cell.text()).matches() ? Integer.parseInt(cell.text()) : -1;
    if (!BusAddress.WRITABLE.contains(address)) {
      faults.add(
          cell,
          "the address " + cell.shown() + " is not understood",
          "a unit answers at its address alone",
          "write it as a decimal number, as the display of the unit shows it, or leave the cell"
              + " empty");
      return null;
    }
    return String.valueOf(address);
  }

  private @Nullable String text(Cell cell, Column column) {
    return isTooLong(cell, "the " + column.heading() + " ") ? null : cell.text();
  }

  /** Whether a text has more characters than a site can say; that is reported. */
  boolean isTooLong(Cell cell, String what) {
    String text = cell.text();
    boolean tooLong = text.codePointCount(0, text.length()) > Format.LONGEST_TEXT;
    if (tooLong) {
      faults.add(
          cell,
          what + cell.shown() + " has more than " + Format.LONGEST_TEXT + " characters",
          "no display shows it",
          "shorten it");
    }
    return tooLong;
  }

  private @Nullable String word(Cell cell, Column column, Word[] known) {
    String normal = AND.matcher(Column.normal(cell.text())).replaceAll("-and-");
    List<String> words = Arrays.stream(known).map(Word::word).toList();
    if (normal.equals("no") && words.contains("none")) {
      return "none";
    }
    if (words.contains(normal)) {
      return normal;
    }
    faults.add(
        cell,
        "the cell " + cell.shown() + " is not understood as " + column.heading(),
        "what is set at the item would be missing in the site",
        "write one of " + String.join(", ", words) + ", or leave the cell empty");
    return null;
  }

  /** Brackets around the list do not count. */
  private @Nullable String conductors(Cell cell) {
    List<String> known = Arrays.stream(Conductor.values()).map(Word::word).toList();
    String bare = cell.text().replaceAll("^\\[|\\]$", "").strip();
    List<String> marks = List.of(BETWEEN_CONDUCTORS.split(bare.toUpperCase(Locale.ROOT)));
    Set<String> found = new LinkedHashSet<>(marks);
    if (!known.containsAll(found) || found.size() < marks.size()) {
      faults.add(
          cell,
          "the conductors " + cell.shown() + " are not understood",
          "a conductor that is not landed can block the line",
          "write those that are landed, each once, of " + String.join(", ", known));
      return null;
    }
    return "[" + String.join(", ", found) + "]";
  }

  private @Nullable String termination(Cell cell, ItemKind kind) {
    String unit = header.unit(Column.TERMINATION);
    if (kind != ItemKind.REPEATER) {
      return quantities.terminator(cell, cell.text(), unit);
    }
    String[] sides = cell.text().split("/", -1);
    if (sides.length != 2) {
      faults.add(
          cell,
          "the termination " + cell.shown() + " of a repeater does not name its two sides",
          "a repeater ends one segment and begins the next",
          "write both, that towards the head unit first, such as 120 ohm / none");
      return null;
    }
    String in = quantities.terminator(cell, sides[0].strip(), unit);
    String out = quantities.terminator(cell, sides[1].strip(), unit);
    return in == null || out == null ? null : "{in: " + in + ", out: " + out + "}";
  }

  private @Nullable String typeId(Cell cell) {
    String id = cell.text();
    // Without device types nobody knows which there are.
    boolean isKnowable = types.source() != null && types.isComplete();
    if (!Format.isId(id) || (isKnowable && !types.ids().contains(id))) {
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
}
