package org.headhouse.linter.editor;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.yaml.Cursor;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/** The names of the items of a chain, as far as a text can be read. */
final class ChainNames {
  static final Set<String> KEYS = Set.of("unit", "repeater", "equipment", "converter");

  private ChainNames() {}

  /**
   * A name where it is given.
   *
   * @param kind the key: unit, repeater, equipment or converter
   */
  record Named(String kind, Scalar name) {}

  /** The names in the order of the chain. */
  static List<Named> of(Node.@Nullable Valued root) {
    List<Named> names = new ArrayList<>();
    Cursor chain = root == null ? null : new Cursor(root, null).get("chain");
    if (chain != null && chain.node() instanceof Sequence items) {
      for (Node item : items.items()) {
        if (chain.inside(item).node() instanceof Mapping mapping) {
          add(mapping, names);
        }
      }
    }
    return names;
  }

  private static void add(Mapping item, List<Named> names) {
    for (Mapping.Entry entry : item.entries()) {
      if (KEYS.contains(entry.key().text())
          && entry.via() == null
          && entry.value() instanceof Scalar name) {
        names.add(new Named(entry.key().text(), name));
      }
    }
  }
}
