package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.function.Function;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Scalar;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * Finds the logical paths of regions in one tree. A hostile file may have tens of thousands of
 * results in one mapping, so what lies in a node is put in order once and then searched by halves.
 */
final class LogicalPaths {
  private final Node.@Nullable Valued root;
  private final IdentityHashMap<Mapping, List<Mapping.Entry>> written = new IdentityHashMap<>();
  private final IdentityHashMap<Node, String> names = new IdentityHashMap<>();

  LogicalPaths(Node.@Nullable Valued root) {
    this.root = root;
  }

  /** The path to what lies at a region. */
  LogicalPath of(Region region) {
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
        int index = lastBefore(region, sequence.items(), Node::region);
        if (index >= 0 && sequence.items().get(index).region().contains(region)) {
          next = sequence.items().get(index);
          String name = names.computeIfAbsent(next, LogicalPaths::name);
          steps.add(name.isEmpty() ? String.valueOf(index) : name);
          boolean inChain = steps.size() == 2 && steps.get(0).equals("chain");
          unit = inChain && !name.isEmpty() ? name : unit;
        }
      }
      node = next;
    }
    return new LogicalPath(String.join("/", steps), unit);
  }

  private Mapping.@Nullable Entry entryAt(Mapping mapping, Region region) {
    List<Mapping.Entry> entries = written.computeIfAbsent(mapping, LogicalPaths::written);
    int index = lastBefore(region, entries, entry -> entry.key().region());
    if (index < 0) {
      return null;
    }
    Mapping.Entry entry = entries.get(index);
    boolean holds =
        entry.key().region().contains(region) || entry.value().region().contains(region);
    return holds ? entry : null;
  }

  /** The entries that stand in the mapping itself, in the order of the file. */
  private static List<Mapping.Entry> written(Mapping mapping) {
    return mapping.entries().stream()
        .filter(entry -> entry.via() == null)
        .sorted(Comparator.comparing(entry -> entry.key().region()))
        .toList();
  }

  /** The index of the last of some parts in order that does not start behind a region; else -1. */
  private static <T> int lastBefore(Region region, List<T> parts, Function<T, Region> place) {
    int low = 0;
    int high = parts.size();
    while (low < high) {
      int middle = (low + high) >>> 1;
      if (startsAfter(place.apply(parts.get(middle)), region)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low - 1;
  }

  private static boolean startsAfter(Region one, Region other) {
    return one.startLine() > other.startLine()
        || (one.startLine() == other.startLine() && one.startColumn() > other.startColumn());
  }

  /** The name that an item gives itself; empty where it has none. */
  private static String name(Node item) {
    if (item instanceof Mapping mapping) {
      for (Mapping.Entry entry : mapping.entries()) {
        boolean names = entry.key().text().equals("unit") || entry.key().text().equals("repeater");
        if (names && entry.value() instanceof Scalar scalar) {
          return scalar.text();
        }
      }
    }
    return "";
  }
}
