package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import org.headhouse.linter.site.ItemKind;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/** Finds the logical paths of regions in one tree. */
final class LogicalPaths {
  private final Node.@Nullable Valued root;
  private final TreeSearch search;
  private final IdentityHashMap<Node, String> names = new IdentityHashMap<>();
  private final ShortTexts texts = new ShortTexts();

  LogicalPaths(Node.@Nullable Valued root, TreeSearch search) {
    this.root = root;
    this.search = search;
  }

  /** The path to what lies at a region. */
  LogicalPath of(Region region) {
    List<String> steps = new ArrayList<>();
    String unit = null;
    Node node = root;
    while (node != null) {
      Node next = null;
      if (node instanceof Mapping mapping) {
        Mapping.Entry entry = search.entryAt(mapping, region);
        if (entry != null) {
          steps.add(texts.of(entry.key().text()));
          next = entry.value().region().contains(region) ? entry.value() : null;
        }
      } else if (node instanceof Sequence sequence) {
        int index = TreeSearch.itemAt(sequence, region);
        if (index >= 0) {
          next = sequence.items().get(index);
          String name = names.computeIfAbsent(next, this::name);
          steps.add(name.isEmpty() ? String.valueOf(index) : name);
          boolean inChain = steps.size() == 2 && steps.get(0).equals("chain");
          unit = inChain && !name.isEmpty() ? name : unit;
        }
      }
      node = next;
    }
    return new LogicalPath(String.join("/", steps), unit);
  }

  /** The name that an item gives itself; empty where it has none. */
  private String name(Node item) {
    if (item instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        if (ItemKind.KEYS.contains(entry.key().text()) && entry.value() instanceof Scalar scalar) {
          return texts.of(scalar.text());
        }
      }
    }
    return "";
  }
}
