package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Quantity;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/** The chain of a site with the items of a list, in its order. */
final class NewChain {
  /** What most cables for such lines have (TIA/EIA-485-A). */
  private static final String USUAL_TERMINATOR = "120 ohm";

  private final ListedChain list;
  private final List<ItemPairs.Slot> slots;
  private final SiteFile file;
  private final SitePolicy policy;
  private final List<ChainItem> items;

  /**
   * @param file the site, with the values of the list
   */
  NewChain(ListedChain list, ItemPairs pairs, SiteFile file, SitePolicy policy) {
    this.list = list;
    this.slots = pairs.slots();
    this.file = file;
    this.policy = policy;
    this.items = file.site().items();
  }

  /** Whether an item joins, leaves or moves. */
  boolean differs() {
    for (int i = 0; i < slots.size(); i++) {
      if (slots.get(i).item() != i) {
        return true;
      }
    }
    return slots.size() != items.size();
  }

  /** The names along the chain. */
  List<@Nullable String> names() {
    List<@Nullable String> names = new ArrayList<>();
    for (ItemPairs.Slot slot : slots) {
      names.add(
          slot.joins()
              ? list.items().get(slot.row()).name()
              : items.get(slot.item()).name().orNull());
    }
    return names;
  }

  /** The text; null where items cannot be told apart by their lines. */
  @Nullable SourceText text() {
    ChainBlocks blocks = ChainBlocks.of(file);
    if (blocks == null) {
      return null;
    }
    ItemTexts texts =
        new ItemTexts(list.columns(), terminator(), policy.groundAtEveryUnit(), headType());
    List<ChainBlocks.Place> places = new ArrayList<>();
    for (int at = 0; at < slots.size(); at++) {
      places.add(
          slots.get(at).joins()
              ? new ChainBlocks.Place(-1, joining(texts, at, blocks.dash()))
              : new ChainBlocks.Place(slots.get(at).item(), question(at, blocks.dash())));
    }
    return blocks.with(places);
  }

  private List<String> joining(ItemTexts texts, int at, String dash) {
    ListedItem row = list.items().get(slots.get(at).row());
    boolean head = file.site().head() == null && slots.get(at).row() == list.head();
    ItemText text =
        texts.of(
            row,
            new ItemTexts.Position(at == 0, at == slots.size() - 1, head),
            "its address is not in the list" + nextFree());
    return text.block(dash, saidByDefaults(row, text));
  }

  /** What the defaults of the site say, and the list does not say otherwise. */
  private Map<String, String> saidByDefaults(ListedItem row, ItemText text) {
    Map<String, String> said = new HashMap<>();
    if (row.isUnit()) {
      file.defaults(text.isFollower() ? Role.FOLLOWER : Role.HEAD)
          .forEach((key, value) -> said.put(key, said(row, text, key, value)));
    }
    return said;
  }

  private static String said(ListedItem row, ItemText text, String key, String value) {
    boolean listed =
        row.values().keySet().stream().anyMatch(column -> column.heading().equals(key));
    return listed ? value : Objects.requireNonNullElse(text.written(key), value);
  }

  private String nextFree() {
    int highest = 0;
    for (ChainItem item : items) {
      highest = Math.max(highest, item.address().or(0));
    }
    for (ListedItem item : list.items()) {
      String address = item.value(Column.ADDRESS);
      highest = Math.max(highest, address == null ? 0 : Integer.parseInt(address));
    }
    for (int next = highest + 1; next <= BusAddress.STANDARD.to(); next++) {
      if (!policy.keptFree().contains(next)) {
        return "; the next free one is " + next;
      }
    }
    return "";
  }

  private String terminator() {
    LineSettings line = file.site().line().orNull();
    Cable cable = line == null ? null : line.cable().orNull();
    return cable == null
        ? USUAL_TERMINATOR
        : cable.impedance().optional().map(Quantity::written).orElse(USUAL_TERMINATOR);
  }

  private DeviceType headType() {
    Unit head = file.site().head();
    return head == null ? DeviceType.UNKNOWN : head.type();
  }

  /** A length that was measured to another item, and that the list does not say anew. */
  private List<String> question(int at, String dash) {
    return isStale(at)
        ? List.of(
            " ".repeat(dash.length())
                + "# look: cable-to-next was measured to another item; measure it anew")
        : List.of();
  }

  /** Whether the item at a place has a length to what does not follow it any more. */
  boolean isStale(int at) {
    ItemPairs.Slot slot = slots.get(at);
    if (slot.joins() || at == slots.size() - 1) {
      return false;
    }
    ItemPairs.Slot next = slots.get(at + 1);
    boolean listed =
        next.isListed()
            && slot.isListed()
            && list.items().get(slot.row()).value(Column.LENGTH) != null;
    return next.item() != slot.item() + 1
        && !listed
        && items.get(slot.item()).cableToNext().isGiven();
  }

  /** The items with such a length. */
  List<ChainItem> stale() {
    List<ChainItem> stale = new ArrayList<>();
    for (int at = 0; at < slots.size(); at++) {
      if (isStale(at)) {
        stale.add(items.get(slots.get(at).item()));
      }
    }
    return stale;
  }

  /** The items whose length the list says to another item than the one that follows. */
  List<ChainItem> lengthsLeft() {
    List<ChainItem> left = new ArrayList<>();
    for (int at = 0; at < slots.size() - 1; at++) {
      ItemPairs.Slot slot = slots.get(at);
      if (!slot.joins()
          && slot.isListed()
          && !slots.get(at + 1).isListed()
          && list.items().get(slot.row()).value(Column.LENGTH) != null) {
        left.add(items.get(slot.item()));
      }
    }
    return left;
  }

  /** The items that the list has in another order. */
  boolean moves() {
    int last = -1;
    for (ItemPairs.Slot slot : slots) {
      if (!slot.joins() && slot.item() < last) {
        return true;
      }
      last = slot.joins() ? last : slot.item();
    }
    return false;
  }
}
