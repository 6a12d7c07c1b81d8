package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.yaml.Mapping;

/**
 * What a list says otherwise of one item, as edits of its file. A value that comes from a default
 * or a merged anchor is left there: the item gets a key of its own.
 */
final class ItemEdits {
  /** Keys that are of no column, each after the one that it is written after. */
  private static final List<String> ORDER = order();

  private final SiteFile file;
  private final ChainItem item;
  private final Map<String, Mapping.Entry> own;

  ItemEdits(SiteFile file, ChainItem item) {
    this.file = file;
    this.item = item;
    this.own = file.keysOf(item);
  }

  private static List<String> order() {
    List<String> order = new ArrayList<>(ItemKind.KEYS);
    for (Column column : Column.values()) {
      if (column == Column.VENTS) {
        order.add("outdoor");
      }
      order.add(column.heading());
    }
    return List.copyOf(order);
  }

  /** Another name, and the line's own references to it; the record is not ours to change. */
  List<Edit> renamed(String name) {
    List<Edit> edits = new ArrayList<>();
    edits.add(Edit.write(item.name().place(), name));
    String old = item.name().orNull();
    if (old != null && isAlone(old)) {
      file.site().references(old).stream()
          .filter(place -> file.isUnder(place.region(), "weather-station", "line", "supervision"))
          .forEach(place -> edits.add(Edit.write(place, name)));
    }
    return edits;
  }

  private boolean isAlone(String name) {
    return file.site().items().stream().filter(one -> one.name().is(name)).count() == 1;
  }

  /** Another value; none where the list says the same. */
  List<Edit> set(Column column, String value) {
    if (item instanceof Repeater repeater && column == Column.TERMINATION) {
      return terminations(repeater, value);
    }
    Setting<?> setting = ItemSettings.of(item, column, Side.IN);
    boolean same =
        Arrays.stream(Side.values())
            .map(side -> ItemSettings.of(item, column, side))
            .noneMatch(one -> ItemSettings.differs(one, column, value));
    if (same || ItemSettings.saysNothing(setting, column, value)) {
      return List.of();
    }
    return List.of(edit(column, setting, value));
  }

  private Edit edit(Column column, Setting<?> setting, String value) {
    String key = column.heading();
    if (!own.containsKey(key)) {
      return Edit.addKey(item.place(), before(key), key, column.written(value));
    }
    boolean plain = column == Column.ADDRESS || column == Column.CONDUCTORS;
    return plain ? Edit.plain(setting.place(), value) : Edit.write(setting.place(), value);
  }

  /** The last key of the item that comes before another one. */
  private String before(String key) {
    return ORDER.subList(0, ORDER.indexOf(key)).stream()
        .filter(own::containsKey)
        .reduce((one, next) -> next)
        .orElse("");
  }

  private List<Edit> terminations(Repeater repeater, String value) {
    String[] sides = value.substring("{in: ".length(), value.length() - 1).split(", out: ", -1);
    List<Edit> edits = new ArrayList<>();
    boolean written = own.containsKey(Column.TERMINATION.heading());
    for (Side side : Side.values()) {
      Setting<?> setting = repeater.connection(side).termination();
      String wanted = sides[side == Side.IN ? 0 : 1];
      if (!ItemSettings.differs(setting, Column.TERMINATION, wanted)) {
        continue;
      }
      if (!written) {
        return List.of(edit(Column.TERMINATION, setting, value));
      }
      edits.add(
          setting.isMissing()
              ? Edit.addKey(repeater.termination(), "", side.word(), wanted)
              : Edit.write(setting.place(), wanted));
    }
    return edits;
  }

  /** What says that nothing follows, for an item that had a cable. */
  List<Edit> endsTheChain() {
    return item.cableToNext().isMissing() || !own.containsKey(Column.LENGTH.heading())
        ? List.of()
        : List.of(Edit.write(item.cableToNext().place(), "none"));
  }
}
