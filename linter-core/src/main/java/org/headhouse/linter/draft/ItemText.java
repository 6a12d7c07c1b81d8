package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.site.DeviceType;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.site.Role;
import org.jspecify.annotations.Nullable;

/**
 * What is written of one item: keys with their values, and comments between them.
 *
 * @param type {@link DeviceType#UNKNOWN} where nothing is known of it
 * @param lines in the order of the file, the key of the name first
 */
record ItemText(ItemKind kind, String name, DeviceType type, List<Line> lines) {

  /** A key, or a comment. */
  sealed interface Line {}

  /**
   * A key.
   *
   * @param value as it is written, in quotes where it needs them
   * @param remark why it is so, or empty
   */
  record Key(String key, String value, String remark) implements Line {
    private String text() {
      return key + ": " + value + (remark.isEmpty() ? "" : "  # " + remark);
    }
  }

  /** What somebody has to look at. */
  record Look(String what) implements Line {}

  ItemText {
    lines = List.copyOf(lines);
  }

  boolean isFollower() {
    return kind == ItemKind.UNIT && Role.FOLLOWER.word().equals(value(Column.ROLE));
  }

  /** The value of a key as it is written, or null where it is not. */
  @Nullable String value(Column column) {
    return written(column.heading());
  }

  /** The value of a key as it is written, or null where it is not. */
  @Nullable String written(String key) {
    Key found = key(key);
    return found == null ? null : found.value();
  }

  private @Nullable Key key(String name) {
    for (Line line : lines) {
      if (line instanceof Key key && key.key().equals(name)) {
        return key;
      }
    }
    return null;
  }

  /** The keys that have the same value in all of some items. */
  static List<Key> shared(List<ItemText> items) {
    List<Key> shared = new ArrayList<>();
    for (Line line : items.get(0).lines) {
      if (line instanceof Key key
          && items.stream().allMatch(item -> key.equals(item.key(key.key())))) {
        shared.add(key);
      }
    }
    return shared;
  }

  /**
   * The lines in the block style of a list.
   *
   * @param dash what is in front of the first line, such as two spaces and a dash
   * @param defaults what is left out because a default says it, by key
   */
  List<String> block(String dash, Map<String, String> defaults) {
    String indentation = " ".repeat(dash.length());
    List<String> block = new ArrayList<>();
    for (Line line : lines) {
      if (line instanceof Look look) {
        block.add(indentation + "# look: " + look.what());
      } else if (line instanceof Key key && !key.value().equals(defaults.get(key.key()))) {
        block.add((block.isEmpty() ? dash : indentation) + key.text());
      }
    }
    return block;
  }

  /** The lines of keys in block style, with some spaces in front. */
  static List<String> lines(List<Key> keys, String indentation) {
    return keys.stream().map(key -> indentation + key.text()).toList();
  }
}
