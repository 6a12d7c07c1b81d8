package org.headhouse.linter.bind;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.site.Format;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.yaml.Alias;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * Gives each unit of a site what the defaults of its role have and it does not say itself. What it
 * says or merges comes first; a default is then in its mapping like an entry that a merge key
 * brings.
 */
public final class UnitDefaults {
  private static final String DEFAULTS = "defaults";

  /**
   * More than all keys of a unit together: what has more is refused, and must not be multiplied.
   */
  private static final int MOST_VALUES = 200;

  /** What makes an item no unit. */
  private static final Set<String> OTHER_KINDS =
      ItemKind.KEYS.stream()
          .filter(key -> !key.equals(ItemKind.UNIT.word()))
          .collect(Collectors.toUnmodifiableSet());

  private UnitDefaults() {}

  /** The root of a site's file with its defaults given to the units; the same where it has none. */
  public static Node.Valued spread(Node.Valued root) {
    Cursor defaults = new Cursor(root, null).get(DEFAULTS);
    if (defaults == null || !(root instanceof Mapping whole)) {
      return root;
    }
    List<Mapping.Entry> entries = new ArrayList<>();
    for (Mapping.Entry entry : whole.entries()) {
      entries.add(
          entry.key().text().equals("chain") && entry.value() instanceof Sequence chain
              ? new Mapping.Entry(entry.key(), spread(chain, defaults), entry.via())
              : entry);
    }
    return new Mapping(whole.region(), entries, whole.anchor());
  }

  private static Sequence spread(Sequence chain, Cursor defaults) {
    List<Node> items = new ArrayList<>();
    for (Node item : chain.items()) {
      items.add(item instanceof Mapping mapping ? spread(mapping, defaults) : item);
    }
    return new Sequence(chain.region(), items, chain.anchor());
  }

  private static Mapping spread(Mapping item, Cursor defaults) {
    Set<String> own = new HashSet<>();
    item.entries().forEach(entry -> own.add(entry.key().text()));
    Scalar role = scalar(item, "role");
    if (role == null || OTHER_KINDS.stream().anyMatch(own::contains)) {
      return item;
    }
    Cursor ofRole = defaults.get(role.text());
    if (ofRole == null
        || !(ofRole.node() instanceof Mapping given)
        || size(given, MOST_VALUES) > MOST_VALUES) {
      return item;
    }
    Scalar name = scalar(item, ItemKind.UNIT.word());
    Alias via = Alias.ofDefault(name == null ? role.region() : name.region(), given);
    List<Mapping.Entry> entries = new ArrayList<>(item.entries());
    for (Mapping.Entry entry : given.entries()) {
      String key = entry.key().text();
      if (!own.contains(key) && !Format.KEYS_WITHOUT_DEFAULT.contains(key)) {
        entries.add(new Mapping.Entry(entry.key(), entry.value(), via));
      }
    }
    return new Mapping(item.region(), entries, item.anchor());
  }

  /** How many values a node has, aliases written out; counted up to a number. */
  private static int size(Node node, int most) {
    Node.Valued valued = Cursor.at(node, null).node();
    int size = 1;
    if (valued instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        size += size > most ? 0 : size(entry.value(), most - size);
      }
    } else if (valued instanceof Sequence sequence) {
      for (Node item : sequence.items()) {
        size += size > most ? 0 : size(item, most - size);
      }
    }
    return size;
  }

  private static @Nullable Scalar scalar(Mapping item, String key) {
    Cursor value = new Cursor(item, null).get(key);
    return value != null && value.node() instanceof Scalar scalar ? scalar : null;
  }
}
