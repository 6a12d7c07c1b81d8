package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * The place of a result in the words of the site, found from its region: the keys that lead there,
 * items of the chain by name.
 *
 * @param text the steps with slashes between
 * @param unit the unit or repeater on the way, or null
 */
record LogicalPath(String text, @Nullable String unit) {

  static LogicalPath of(Node.@Nullable Valued root, Region region) {
    List<String> steps = new ArrayList<>();
    String unit = null;
    Node node = root;
    while (node != null) {
      Node next = null;
      if (node instanceof Mapping mapping) {
        Mapping.Entry entry = entryAt(mapping, region);
        if (entry != null) {
          steps.add(entry.key().text());
          next = entry.value().region().contains(region) ? entry.value() : null;
        }
      } else if (node instanceof Sequence sequence) {
        next = itemAt(sequence, region);
        if (next != null) {
          String name = name(next);
          steps.add(name == null ? String.valueOf(sequence.items().indexOf(next)) : name);
          boolean inChain = steps.size() == 2 && steps.get(0).equals("chain");
          unit = inChain ? name : unit;
        }
      }
      node = next;
    }
    return new LogicalPath(String.join("/", steps), unit);
  }

  private static Mapping.@Nullable Entry entryAt(Mapping mapping, Region region) {
    for (Mapping.Entry entry : mapping.entries()) {
      boolean own = entry.via() == null;
      if (own
          && (entry.key().region().contains(region) || entry.value().region().contains(region))) {
        return entry;
      }
    }
    return null;
  }

  private static @Nullable Node itemAt(Sequence sequence, Region region) {
    for (Node item : sequence.items()) {
      if (item.region().contains(region)) {
        return item;
      }
    }
    return null;
  }

  private static @Nullable String name(Node item) {
    if (item instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        boolean names = entry.key().text().equals("unit") || entry.key().text().equals("repeater");
        if (names && entry.value() instanceof Scalar scalar) {
          return scalar.text();
        }
      }
    }
    return null;
  }
}
