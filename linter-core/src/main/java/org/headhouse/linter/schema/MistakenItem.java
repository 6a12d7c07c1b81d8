package org.headhouse.linter.schema;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Nearest;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.jspecify.annotations.Nullable;

/**
 * Tells of an item of the chain that is written as what it is not. The schema has many things
 * against such an item, and all of them are this one mistake.
 */
final class MistakenItem {
  private final Cursor item;
  private final ErrorLocation where;
  private final Tree tree;
  private final Set<String> keys = new HashSet<>();
  private final @Nullable String nearRepeater;

  private MistakenItem(ErrorLocation where, Mapping mapping, Tree tree, Set<String> known) {
    this.item = where.cursor();
    this.where = where;
    this.tree = tree;
    String near = null;
    for (Mapping.Entry entry : mapping.entries()) {
      String key = entry.key().text();
      String meant = known.contains(key) ? key : Nearest.to(key, known).orElse(key);
      keys.add(meant);
      near = meant.equals("repeater") ? key : near;
    }
    this.nearRepeater = near;
  }

  /** The one thing to tell of an item, or empty where the schema's words fit. */
  static Optional<Finding> of(ErrorLocation where, Tree tree, Set<String> known) {
    return where.cursor().node() instanceof Mapping mapping
        ? Optional.ofNullable(new MistakenItem(where, mapping, tree, known).finding())
        : Optional.empty();
  }

  private @Nullable Finding finding() {
    if (keys.contains("repeater")) {
      if (keys.containsAll(List.of("role", "address"))) {
        return isExact("repeater") && !keys.contains("unit") ? named("repeater", "unit") : null;
      }
      return isExact("repeater") ? null : misspelt();
    }
    if (keys.contains("role") || keys.contains("address")) {
      return null;
    }
    if (keys.contains("unit")) {
      return hasTwoSides() && isExact("unit") ? named("unit", "repeater") : null;
    }
    return neither();
  }

  private boolean isExact(String key) {
    return tree.entry(item, key) != null;
  }

  private boolean hasTwoSides() {
    Mapping.Entry entry = tree.entry(item, "termination");
    return entry != null && item.valueOf(entry).node() instanceof Mapping;
  }

  private @Nullable Finding misspelt() {
    String key = nearRepeater;
    Mapping.Entry entry = key == null ? null : tree.entry(item, key);
    return key == null || entry == null
        ? null
        : Finding.of(
            "schema.unknown-key",
            item.keyOf(entry),
            KeyWords.unknown(key, List.of("repeater"), near -> true));
  }

  private @Nullable Finding named(String key, String other) {
    Mapping.Entry entry = tree.entry(item, key);
    if (entry == null) {
      return null;
    }
    boolean isUnit = other.equals("unit");
    return Finding.of(
        "schema.unknown-key",
        item.keyOf(entry),
        new Message(
            where.called() + " is written as a " + key + ", and has the keys of a " + other,
            isUnit
                ? "a repeater has no role and no address"
                : "only a repeater has a termination on two sides, and no role or address",
            "write " + YamlText.quoted(other) + " in place of " + YamlText.quoted(key)));
  }

  private Finding neither() {
    return Finding.of(
        "schema.missing-key",
        where.owner(),
        new Message(
            where.called() + " is neither a unit nor a repeater",
            "nobody can tell what the cable reaches here",
            hasTwoSides()
                ? "add \"repeater\" with its name"
                : "add \"unit\" with its name, role and address, or \"repeater\" with its name"));
  }
}
