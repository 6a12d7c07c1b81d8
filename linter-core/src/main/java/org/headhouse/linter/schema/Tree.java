package org.headhouse.linter.schema;

import com.networknt.schema.path.NodePath;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.source.Place;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * The tree that is checked, where errors are looked up. A hostile file may have tens of thousands
 * of them in one mapping, so the keys of each mapping are indexed once.
 */
final class Tree {
  private static final List<String> NAMING =
      Stream.concat(ItemKind.KEYS.stream(), Stream.of("id", "rule")).toList();

  private static final List<String> LENGTHS = List.of("cable-to-next", "stub");

  private final Cursor root;
  private final MeantKeys meant = new MeantKeys();
  private final IdentityHashMap<Mapping, Map<String, Mapping.Entry>> entries =
      new IdentityHashMap<>();
  private final IdentityHashMap<Mapping, Map<String, Mapping.Entry>> entriesBefore =
      new IdentityHashMap<>();

  private @Nullable Boolean inFeet;

  Tree(Cursor root) {
    this.root = root;
  }

  Cursor root() {
    return root;
  }

  /** What keys of this tree are meant to be. */
  MeantKeys meant() {
    return meant;
  }

  /** The entry of a key, or null where the node is no mapping or lacks the key. */
  Mapping.@Nullable Entry entry(Cursor cursor, String key) {
    return cursor.node() instanceof Mapping mapping
        ? entries.computeIfAbsent(mapping, Tree::index).get(key)
        : null;
  }

  /** The entry before that of a key, or null where there is none. */
  Mapping.@Nullable Entry entryBefore(Cursor cursor, String key) {
    return cursor.node() instanceof Mapping mapping
        ? entriesBefore.computeIfAbsent(mapping, Tree::indexOfFollowing).get(key)
        : null;
  }

  /** Whether more lengths along the chain are in feet than in metres. */
  boolean isInFeet() {
    if (inFeet == null) {
      inFeet = feetMoreThanMetres() > 0;
    }
    return inFeet;
  }

  private int feetMoreThanMetres() {
    Mapping.Entry chain = entry(root, "chain");
    Cursor list = chain == null ? root : root.valueOf(chain);
    int more = 0;
    if (list.node() instanceof Sequence sequence) {
      for (Node item : sequence.items()) {
        for (String key : LENGTHS) {
          Cursor unit = list.inside(item);
          Mapping.Entry length = entry(unit, key);
          if (length != null && unit.valueOf(length).node() instanceof Scalar scalar) {
            more += scalar.text().endsWith("ft") ? 1 : scalar.text().endsWith("m") ? -1 : 0;
          }
        }
      }
    }
    return more;
  }

  private static Map<String, Mapping.Entry> index(Mapping mapping) {
    Map<String, Mapping.Entry> index = new HashMap<>();
    mapping.entries().forEach(entry -> index.put(entry.key().text(), entry));
    return index;
  }

  private static Map<String, Mapping.Entry> indexOfFollowing(Mapping mapping) {
    Map<String, Mapping.Entry> index = new HashMap<>();
    List<Mapping.Entry> all = mapping.entries();
    for (int i = 1; i < all.size(); i++) {
      index.put(all.get(i).key().text(), all.get(i - 1));
    }
    return index;
  }

  /** What lies at the end of a path of keys and numbers of items. */
  ErrorLocation find(NodePath path) {
    ErrorLocation where = new ErrorLocation(root, first(root), "the file");
    String list = "";
    for (int i = 0; i < path.getNameCount(); i++) {
      String step = path.getElement(i).toString();
      Cursor cursor = where.cursor();
      if (cursor.node() instanceof Sequence sequence) {
        int index = Integer.parseInt(step);
        Cursor item = cursor.inside(sequence.items().get(index));
        where = new ErrorLocation(item, first(item), named(item, "item " + (index + 1) + list));
      } else {
        Mapping.Entry entry = entry(cursor, step);
        if (entry == null) {
          break;
        }
        where = new ErrorLocation(cursor.valueOf(entry), cursor.keyOf(entry), "\"" + step + "\"");
      }
      list = " of " + where.called();
    }
    return where;
  }

  /** An item of a list by the name that it gives itself. */
  private String named(Cursor item, String otherwise) {
    for (String key : NAMING) {
      Mapping.Entry entry = entry(item, key);
      if (entry != null
          && item.valueOf(entry).node() instanceof Scalar scalar
          && !scalar.text().isEmpty()) {
        return ActualValue.shortened(scalar.text());
      }
    }
    return otherwise;
  }

  private static Place first(Cursor cursor) {
    return cursor.node() instanceof Mapping mapping && !mapping.entries().isEmpty()
        ? cursor.keyOf(mapping.entries().get(0))
        : cursor.place();
  }
}
