package org.headhouse.linter.fix;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/** The nodes of a tree by where they are written, and the places that use each. */
final class NodeIndex {
  private final Node.Valued root;
  private final Map<Region, Node> nodes = new HashMap<>();
  private final Map<Region, Node> underKey = new HashMap<>();
  private final Map<Region, Sequence> listOfItem = new HashMap<>();
  private boolean anyAlias;
  private @Nullable Map<Region, Set<Region>> users;

  NodeIndex(Node.Valued root) {
    this.root = root;
    index(root);
  }

  private void index(Node node) {
    if (node instanceof Alias) {
      anyAlias = true;
    }
    if (node instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        if (entry.via() == null) {
          nodes.put(entry.key().region(), entry.key());
          underKey.put(entry.key().region(), entry.value());
          index(entry.value());
        } else {
          anyAlias = true;
        }
      }
    }
    if (node instanceof Sequence sequence) {
      for (Node item : sequence.items()) {
        listOfItem.put(item.region(), sequence);
        index(item);
      }
    }
    // The empty value of a key has the region of the key, and must not hide it.
    nodes.putIfAbsent(node.region(), node);
  }

  /** The scalar at a place, aliases followed; null where there is none. */
  @Nullable Scalar scalar(Place place) {
    return node(place) instanceof Scalar scalar ? scalar : null;
  }

  /** The list at a place, aliases followed; null where there is none. */
  @Nullable Sequence sequence(Place place) {
    return node(place) instanceof Sequence sequence ? sequence : null;
  }

  /** The mapping at a place or under the key there, aliases followed; null where there is none. */
  @Nullable Mapping mapping(Place place) {
    Node node = node(place);
    if (node instanceof Scalar) {
      node = underKey.get(node.region());
    }
    return node instanceof Mapping mapping ? mapping : null;
  }

  private @Nullable Node node(Place place) {
    Place.Anchored anchored = place.anchored();
    return nodes.get(anchored == null ? place.region() : anchored.value());
  }

  /** Whether a region is in the defaults of the units. */
  boolean isDefault(Region region) {
    Cursor defaults = new Cursor(root, null).get("defaults");
    return defaults != null && defaults.node().region().contains(region);
  }

  /** The alias that is written in a region, or null. */
  @Nullable Alias alias(Region region) {
    return nodes.get(region) instanceof Alias alias ? alias : null;
  }

  /** The list that an item or an alias to one is written in; null for none. */
  @Nullable Sequence listOf(Region item) {
    return listOfItem.get(item);
  }

  /**
   * The places that use what is written in a region: the region itself, or the outermost aliases
   * that lead there.
   */
  Set<Region> users(Region region) {
    if (!anyAlias) {
      return Set.of(region);
    }
    Map<Region, Set<Region>> all = users;
    if (all == null) {
      all = new HashMap<>();
      reach(new Cursor(root, null), all);
      users = all;
    }
    return all.getOrDefault(region, Set.of(region));
  }

  private static void reach(Cursor cursor, Map<Region, Set<Region>> users) {
    add(cursor.node().region(), cursor.place(), users);
    if (cursor.node() instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        add(entry.key().region(), cursor.keyOf(entry), users);
        reach(cursor, entry.value(), cursor.valueOf(entry), users);
      }
    }
    if (cursor.node() instanceof Sequence sequence) {
      for (Node item : sequence.items()) {
        reach(cursor, item, cursor.inside(item), users);
      }
    }
  }

  private static void reach(Cursor parent, Node child, Cursor at, Map<Region, Set<Region>> users) {
    if (child instanceof Alias alias) {
      Alias outer = parent.via() == null ? alias : at.via();
      add(alias.region(), Place.at(outer == null ? alias.region() : outer.region()), users);
    }
    reach(at, users);
  }

  private static void add(Region region, Place user, Map<Region, Set<Region>> users) {
    users.computeIfAbsent(region, one -> new HashSet<>()).add(user.region());
  }
}
