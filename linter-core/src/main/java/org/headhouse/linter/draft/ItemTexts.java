package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.CommModule;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.ModuleNeed;
import org.headhouse.linter.site.Pair;
import org.headhouse.linter.site.ReadingSource;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.StaleAction;
import org.jspecify.annotations.Nullable;

/**
 * Completes what a list says of an item with what is right on a line, and asks what nobody can know
 * who has not seen it.
 *
 * @param columns of the list
 * @param terminator that the ends of the line have, as it is written
 * @param groundEverywhere whether ground is landed at every unit, and not at the head unit only
 * @param headType the type of the head unit, which crossed pairs are compared with
 */
record ItemTexts(
    Set<Column> columns, String terminator, boolean groundEverywhere, DeviceType headType) {

  /**
   * Where an item is.
   *
   * @param head whether it is the head unit
   */
  record Position(boolean first, boolean last, boolean head) {}

  /**
   * The keys of an item.
   *
   * @param withoutAddress what to ask where the list has no address for it
   */
  ItemText of(ListedItem item, Position at, String withoutAddress) {
    List<ItemText.Line> lines = new ArrayList<>();
    add(lines, item.kind().word(), YamlScalar.of(item.name()));
    boolean head = isHead(item, at);
    if (item.isUnit()) {
      add(lines, Column.ROLE.heading(), (head ? Role.HEAD : Role.FOLLOWER).word());
    }
    if (Column.ADDRESS.isOf(item.kind())) {
      given(lines, item, Column.ADDRESS, null, withoutAddress);
    }
    given(lines, item, Column.TYPE, null, null);
    given(lines, item, Column.SERIAL, null, null);
    given(lines, item, Column.FIRMWARE, null, null);
    if (item.isUnit()) {
      boolean builtIn = item.type().commModule().is(ModuleNeed.BUILT_IN);
      usual(lines, item, Column.MODULE, (builtIn ? CommModule.BUILT_IN : CommModule.FITTED).word());
    }
    boolean ground = head || (item.isUnit() && groundEverywhere);
    usual(lines, item, Column.CONDUCTORS, ground ? "[A, B, G]" : "[A, B]");
    pair(lines, item);
    termination(lines, item, at);
    if (item.isUnit()) {
      vents(lines, item, head);
    } else if (item.value(Column.TYPE) == null) {
      lines.add(new ItemText.Look(unknown(item.kind())));
    }
    given(lines, item, Column.STUB, null, null);
    if (!at.last()) {
      given(
          lines,
          item,
          Column.LENGTH,
          null,
          "cable-to-next is not in the list; measure it along the cable");
      given(lines, item, Column.RUN, null, null);
      given(lines, item, Column.PROTECTION, null, null);
    }
    return new ItemText(item.kind(), item.name(), item.type(), lines);
  }

  private static boolean isHead(ListedItem item, Position at) {
    String role = item.value(Column.ROLE);
    return item.isUnit() && (role == null ? at.head() : role.equals(Role.HEAD.word()));
  }

  private static String unknown(ItemKind kind) {
    return kind == ItemKind.EQUIPMENT
        ? "its idle-bias, isolated and unit-load; broadcasts: ignored or obeyed; who polls it"
        : "its idle-bias, isolated and unit-load";
  }

  private static void add(List<ItemText.Line> lines, String key, String value) {
    lines.add(new ItemText.Key(key, value, ""));
  }

  /** The value of the list, else another one, else a question, each where there is one. */
  private static void given(
      List<ItemText.Line> lines,
      ListedItem item,
      Column column,
      @Nullable String otherwise,
      @Nullable String question) {
    String value = item.value(column);
    if (value != null) {
      add(lines, column.heading(), column.written(value));
    } else if (otherwise != null) {
      add(lines, column.heading(), otherwise);
    }
    if (value == null && question != null) {
      lines.add(new ItemText.Look(question));
    }
  }

  /** A list that has the column for others, and nothing for this item, leaves it open. */
  private void usual(List<ItemText.Line> lines, ListedItem item, Column column, String usual) {
    boolean open = columns.contains(column);
    given(lines, item, column, usual, open ? openInTheList(column) : null);
  }

  private static String openInTheList(Column column) {
    return "its " + column.heading() + ", which the list does not say";
  }

  private void pair(List<ItemText.Line> lines, ListedItem item) {
    boolean crossed =
        item.isUnit()
            && item.type().isKnown()
            && headType.isKnown()
            && item.type().positiveTerminal() != headType.positiveTerminal();
    if (item.value(Column.PAIR) == null && crossed) {
      lines.add(
          new ItemText.Key(
              Column.PAIR.heading(),
              Pair.CROSSED.word(),
              "its positive terminal has another mark than the head unit's"));
    } else {
      given(lines, item, Column.PAIR, null, null);
    }
  }

  /** Where the list has the column, nobody can say for it what is fitted; a rule asks then. */
  private void termination(List<ItemText.Line> lines, ListedItem item, Position at) {
    String usual = null;
    if (!columns.contains(Column.TERMINATION)) {
      String in = at.first() ? "none" : terminator;
      String out = at.last() ? "none" : terminator;
      boolean end = at.first() || at.last();
      usual =
          item.kind() == ItemKind.REPEATER
              ? "{in: " + in + ", out: " + out + "}"
              : end ? terminator : "none";
    }
    given(lines, item, Column.TERMINATION, usual, null);
  }

  /** What a unit does without readings is never taken for safe where the list leaves it open. */
  private void vents(List<ItemText.Line> lines, ListedItem item, boolean head) {
    add(lines, "outdoor", (head ? ReadingSource.LOCAL : ReadingSource.HEAD).word());
    given(
        lines, item, Column.VENTS, null, "its vents; set vents: none, roof, side or roof-and-side");
    boolean open = columns.contains(Column.STALE);
    given(
        lines,
        item,
        Column.STALE,
        open ? null : StaleAction.CLOSE.word(),
        open ? openInTheList(Column.STALE) : null);
  }
}
