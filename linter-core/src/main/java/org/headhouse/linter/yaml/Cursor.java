package org.headhouse.linter.yaml;

import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * A node with the way that led to it: aliases are followed, and the outermost one is kept.
 *
 * @param node the node that is written out
 * @param via the outermost alias on the way here, or null
 */
public record Cursor(Node.Valued node, @Nullable Alias via) {

  /** The cursor at a node; {@code outer} is the alias that led to it, or null. */
  public static Cursor at(Node node, @Nullable Alias outer) {
    if (node instanceof Alias alias) {
      return new Cursor(alias.target(), outer == null ? alias : outer);
    }
    return new Cursor((Node.Valued) node, outer);
  }

  /** The cursor at an item of the sequence or a value of the mapping that this cursor is at. */
  public Cursor inside(Node child) {
    return at(child, via);
  }

  /** The cursor at an entry's value. */
  public Cursor valueOf(Mapping.Entry entry) {
    return at(entry.value(), via == null ? entry.via() : via);
  }

  /** The place of an entry's key. */
  public Place keyOf(Mapping.Entry entry) {
    return place(entry.key(), via == null ? entry.via() : via);
  }

  /** The value of a key, or null where the node is no mapping or lacks the key. */
  public @Nullable Cursor get(String key) {
    Mapping.Entry entry = entry(key);
    return entry == null ? null : valueOf(entry);
  }

  /** The entry of a key, or null where the node is no mapping or lacks the key. */
  public Mapping.@Nullable Entry entry(String key) {
    if (node instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        if (entry.key().text().equals(key)) {
          return entry;
        }
      }
    }
    return null;
  }

  /** Where the node is. */
  public Place place() {
    return place(node, via);
  }

  private static Place place(Node.Valued node, @Nullable Alias via) {
    if (via == null) {
      return Place.at(node.region());
    }
    if (via.isDefault()) {
      return new Place.ThroughDefault(
          via.region(), new Place.Anchored("", via.target().region(), node.region()));
    }
    Node.Anchor anchor = via.target().anchor();
    if (anchor == null) {
      throw new IllegalStateException("an alias without an anchor");
    }
    return new Place.ThroughAlias(
        via.region(), new Place.Anchored(anchor.name(), anchor.region(), node.region()));
  }
}
