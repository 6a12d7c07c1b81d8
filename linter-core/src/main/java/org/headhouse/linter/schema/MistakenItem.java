package org.headhouse.linter.schema;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.jspecify.annotations.Nullable;

/**
 * Reports an item of the chain that is written as another kind of item. The schema has many errors
 * for such an item, and all of them have this one cause.
 */
final class MistakenItem {
  private static final String UNIT = ItemKind.UNIT.word();
  private static final String REPEATER = ItemKind.REPEATER.word();
  private static final String EQUIPMENT = ItemKind.EQUIPMENT.word();

  private final Cursor item;
  private final ErrorLocation where;
  private final Tree tree;
  private final Set<String> keys = new HashSet<>();

  /** The key of what the item is meant to be, where that is no unit; null for a unit. */
  private @Nullable String kind;

  /** The same key as the file has it. */
  private @Nullable String written;

  private MistakenItem(ErrorLocation where, Mapping mapping, Tree tree, Set<String> known) {
    this.item = where.cursor();
    this.where = where;
    this.tree = tree;
    for (Mapping.Entry entry : mapping.entries()) {
      String key = entry.key().text();
      String meant = known.contains(key) ? key : tree.meant().of(key, known).orElse(key);
      keys.add(meant);
      if (ItemKind.KEYS.contains(meant) && !meant.equals(UNIT)) {
        kind = meant;
        written = key;
      }
    }
  }

  /** The one finding for an item, or empty where the errors of the schema fit. */
  static Optional<Finding> of(ErrorLocation where, Tree tree, Set<String> known) {
    return where.cursor().node() instanceof Mapping mapping
        ? Optional.ofNullable(new MistakenItem(where, mapping, tree, known).finding())
        : Optional.empty();
  }

  private @Nullable Finding finding() {
    if (kind != null && written != null) {
      boolean isExact = kind.equals(written);
      if (keys.containsAll(List.of("role", "address"))) {
        return isExact && !keys.contains(UNIT) ? named(kind, UNIT) : null;
      }
      return isExact ? null : misspelt(kind, written);
    }
    if (keys.contains("role") || keys.contains("address")) {
      return null;
    }
    if (keys.contains(UNIT)) {
      return hasTwoSides() && tree.entry(item, UNIT) != null ? named(UNIT, REPEATER) : null;
    }
    return neither();
  }

  private boolean hasTwoSides() {
    Mapping.Entry entry = tree.entry(item, "termination");
    return entry != null && item.valueOf(entry).node() instanceof Mapping;
  }

  private @Nullable Finding misspelt(String meant, String key) {
    Mapping.Entry entry = tree.entry(item, key);
    return entry == null
        ? null
        : Finding.of(
            "schema.unknown-key",
            item.keyOf(entry),
            KeyWords.unknown(key, List.of(meant), near -> true, tree.meant()));
  }

  private @Nullable Finding named(String key, String other) {
    Mapping.Entry entry = tree.entry(item, key);
    if (entry == null) {
      return null;
    }
    return Finding.of(
        "schema.unknown-key",
        item.keyOf(entry),
        new Message(
            where.called()
                + " is written as "
                + withArticle(key)
                + ", and has the keys of a "
                + other,
            other.equals(UNIT)
                ? "only a unit has a role"
                : "only a repeater has a termination on two sides, and no role or address",
            "write " + YamlText.quoted(other) + " in place of " + YamlText.quoted(key)));
  }

  private static String withArticle(String kind) {
    return kind.equals(EQUIPMENT) ? kind : "a " + kind;
  }

  private Finding neither() {
    return Finding.of(
        "schema.missing-key",
        where.owner(),
        new Message(
            where.called() + " is not a unit, repeater, equipment or converter",
            "nobody can tell what is connected here",
            hasTwoSides()
                ? "add \"repeater\" with its name"
                : "add \"unit\" with its name, role and address, or \"repeater\", \"equipment\" or"
                    + " \"converter\" with its name"));
  }
}
