package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.change.ItemMatcher;
import org.headhouse.linter.change.TrackedItem;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.DeviceTypes;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/**
 * Which row of a list is which item of a site, and what the chain looks like after the list.
 *
 * <p>Items of a kind that the list has no row for are left where they are: a list of controllers
 * says nothing of repeaters.
 */
final class ItemPairs {
  private static final int NONE = -1;

  private final List<ChainItem> items;
  private final ListedChain list;
  private final int[] item; // of each row
  private final int[] row; // of each item

  /**
   * A place of the chain after the list.
   *
   * @param item its index in the site, or -1 for one that joins
   * @param row its index in the list, or -1 for one that the list says nothing of
   */
  record Slot(int item, int row) {
    boolean joins() {
      return item == NONE;
    }

    boolean isListed() {
      return row != NONE;
    }
  }

  private ItemPairs(Site site, ListedChain list) {
    this.items = site.items();
    this.list = list;
    this.item = new int[list.items().size()];
    this.row = new int[items.size()];
    Arrays.fill(item, NONE);
    Arrays.fill(row, NONE);
  }

  static ItemPairs of(Site site, ListedChain list, DeviceTypes types, Limits limits) {
    ItemPairs pairs = new ItemPairs(site, list);
    for (TrackedItem tracked : ItemMatcher.of(site, listed(list, types, limits))) {
      if (tracked.before() != null && tracked.after() != null) {
        pairs.join(tracked.before().index(), tracked.after().index());
      }
    }
    pairs.joinByName();
    if (!list.says(Column.ADDRESS) && !list.says(Column.TYPE)) {
      pairs.joinByPlace();
    }
    return pairs;
  }

  /** The rows as a site, which the site that is there can be compared with. */
  private static Site listed(ListedChain list, DeviceTypes types, Limits limits) {
    StringBuilder text = new StringBuilder("chain:\n");
    int head = list.head();
    for (int i = 0; i < list.items().size(); i++) {
      ListedItem item = list.items().get(i);
      text.append("  - ").append(item.kind().word()).append(": ");
      text.append(YamlScalar.of(item.name())).append('\n');
      if (item.isUnit() && item.value(Column.ROLE) == null) {
        add(text, Column.ROLE, (i == head ? Role.HEAD : Role.FOLLOWER).word());
      }
      item.values().forEach((column, value) -> add(text, column, column.written(value)));
    }
    SiteFile file = SiteFile.of(new SourceText("", text.toString()), types, limits);
    return Objects.requireNonNull(file, "what is written here can be read").site();
  }

  private static void add(StringBuilder text, Column column, String value) {
    text.append("    ").append(column.heading()).append(": ").append(value).append('\n');
  }

  private void join(int ofSite, int ofList) {
    item[ofList] = ofSite;
    row[ofSite] = ofList;
  }

  /** A unit of the same name and another type is the same place on the line. */
  private void joinByName() {
    for (int r = 0; r < item.length; r++) {
      for (int i = 0; i < row.length && item[r] == NONE; i++) {
        if (row[i] == NONE
            && items.get(i).kind() == list.items().get(r).kind()
            && items.get(i).name().is(list.items().get(r).name())) {
          join(i, r);
        }
      }
    }
  }

  /** A list with names and lengths alone: what is alone between the same neighbours is the same. */
  private void joinByPlace() {
    List<Integer> spoken = new ArrayList<>();
    for (int i = 0; i < row.length; i++) {
      if (isSpokenOf(i)) {
        spoken.add(i);
      }
    }
    for (int r = 0; r < item.length; r++) {
      int before = r == 0 ? NONE : spoken.indexOf(item[r - 1]);
      int at = before + 1;
      int after = r + 1 == item.length ? spoken.size() : spoken.indexOf(item[r + 1]);
      if (item[r] == NONE
          && (r == 0 || before >= 0)
          && after == at + 1
          && at < spoken.size()
          && row[spoken.get(at)] == NONE
          && items.get(spoken.get(at)).kind() == list.items().get(r).kind()) {
        join(spoken.get(at), r);
      }
    }
  }

  private boolean isSpokenOf(int i) {
    ItemKind kind = items.get(i).kind();
    return kind == ItemKind.UNIT || list.has(kind);
  }

  /** The row of an item, or null where the list has none for it. */
  @Nullable ListedItem rowOf(int i) {
    return row[i] == NONE ? null : list.items().get(row[i]);
  }

  /** The items that the list leaves out, though it has others of their kind. */
  List<ChainItem> removed() {
    return items.stream().filter(one -> leaves(one.index())).toList();
  }

  boolean leaves(int i) {
    return row[i] == NONE && isSpokenOf(i);
  }

  /** The items of kinds that the list has no row for. */
  List<ChainItem> leftAlone() {
    return items.stream().filter(one -> !isSpokenOf(one.index())).toList();
  }

  /** The chain after the list. */
  List<Slot> slots() {
    List<Slot> slots = new ArrayList<>();
    for (int r = 0; r < item.length; r++) {
      slots.add(new Slot(item[r], r));
    }
    for (int i = 0; i < row.length; i++) {
      if (!isSpokenOf(i)) {
        slots.add(placeAfter(i, slots), new Slot(i, NONE));
      }
    }
    return slots;
  }

  /** Where an item stays: after the nearest one before it that stays as well. */
  private static int placeAfter(int i, List<Slot> slots) {
    for (int before = i - 1; before >= 0; before--) {
      for (int at = 0; at < slots.size(); at++) {
        if (slots.get(at).item() == before) {
          return at + 1;
        }
      }
    }
    return 0;
  }
}
