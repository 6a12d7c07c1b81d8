package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * Keys and names that lead from the root of a tree to a place. What an alias or a merge key brings
 * is reached as if it were written where it is used, and so is a default.
 */
final class NodePath {
  /** Keys whose value names an item of a list. */
  private static final List<String> NAMING =
      Stream.concat(ItemKind.KEYS.stream(), Stream.of("at", "rule")).toList();

  private final TreeSearch search;
  private final List<String> steps = new ArrayList<>();
  private Region region;
  private Place.@Nullable Anchored anchored;
  private final boolean isDefault;
  private Node end;

  private NodePath(Node.Valued root, TreeSearch search, Place place) {
    this.search = search;
    this.region = place.region();
    this.anchored = place.anchored();
    this.isDefault = place instanceof Place.ThroughDefault;
    this.end = root;
  }

  static NodePath of(Node.Valued root, TreeSearch search, Place place) {
    NodePath path = new NodePath(root, search, place);
    for (Node next = root; next != null; next = path.next(next)) {
      path.end = next;
    }
    return path;
  }

  List<String> steps() {
    return List.copyOf(steps);
  }

  /** The node at the place; where the place is a key, the key's value. */
  Node end() {
    return end;
  }

  private @Nullable Node next(Node node) {
    if (node instanceof Alias alias) {
      return anchored == null || !alias.region().contains(region) ? null : through(alias.target());
    }
    if (node instanceof Mapping mapping) {
      return inside(mapping);
    }
    return node instanceof Sequence sequence ? inside(sequence) : null;
  }

  /** From here on, the place is inside the anchored value. */
  private Node through(Node target) {
    region = anchored == null ? region : anchored.value();
    anchored = null;
    return target;
  }

  private @Nullable Node inside(Mapping mapping) {
    Mapping.Entry given = isDefault ? merged(mapping) : null;
    if (given != null) {
      steps.add(given.key().text());
      return through(given.value());
    }
    Mapping.Entry own = search.entryAt(mapping, region);
    if (own != null) {
      steps.add(own.key().text());
      return own.value();
    }
    Mapping.Entry merged = merged(mapping);
    if (merged == null) {
      return null;
    }
    steps.add(merged.key().text());
    return through(merged.value());
  }

  /** The entry that a merge key or a default brings, and that holds the place; or null. */
  private Mapping.@Nullable Entry merged(Mapping mapping) {
    Region written = anchored == null ? null : anchored.value();
    for (Mapping.Entry entry : mapping.entries()) {
      boolean merged = entry.via() != null && entry.via().region().contains(region);
      if (merged && written != null && TreeSearch.holds(entry, written)) {
        return entry;
      }
    }
    return null;
  }

  private @Nullable Node inside(Sequence sequence) {
    int index = TreeSearch.itemAt(sequence, region);
    if (index < 0) {
      return null;
    }
    Node item = sequence.items().get(index);
    Cursor cursor = Cursor.at(item, null);
    String name = name(cursor);
    if (name != null) {
      steps.add(name);
    } else if (!(cursor.node() instanceof Scalar)) {
      steps.add(String.valueOf(index));
    }
    return item;
  }

  /** A repeater has two sides, each with what is written of it. */
  private static String side(Cursor item) {
    Cursor side = item.get("side");
    return side != null && side.node() instanceof Scalar scalar ? ", side " + scalar.text() : "";
  }

  /** A rule may be suppressed for several units. */
  private static String unit(Cursor item, String key) {
    Cursor unit = key.equals("rule") ? item.get("unit") : null;
    return unit != null && unit.node() instanceof Scalar scalar ? " of " + scalar.text() : "";
  }

  private static @Nullable String name(Cursor item) {
    for (String key : NAMING) {
      Cursor value = item.get(key);
      if (value != null && value.node() instanceof Scalar scalar) {
        String more = side(item) + unit(item, key);
        // Thousands of results may be about one item, whose name may be long.
        return more.isEmpty() ? scalar.text() : scalar.text() + more;
      }
    }
    return null;
  }
}
