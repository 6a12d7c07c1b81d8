package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.function.Function;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.yaml.Mapping;
import org.headhouse.linter.yaml.Node;
import org.headhouse.linter.yaml.Sequence;
import org.jspecify.annotations.Nullable;

/**
 * Finds what is at a region in the nodes of one tree. A hostile file may have tens of thousands of
 * results in one mapping, so the entries of a mapping are sorted once, and then found by binary
 * search.
 */
final class TreeSearch {
  private final IdentityHashMap<Mapping, List<Mapping.Entry>> written = new IdentityHashMap<>();

  /** The entry that is written in the mapping itself and holds a region, or null. */
  Mapping.@Nullable Entry entryAt(Mapping mapping, Region region) {
    List<Mapping.Entry> entries = written.computeIfAbsent(mapping, TreeSearch::written);
    int index = lastBefore(region, entries, entry -> entry.key().region());
    if (index < 0) {
      return null;
    }
    Mapping.Entry entry = entries.get(index);
    return holds(entry, region) ? entry : null;
  }

  /** Whether the key or the value of an entry holds a region. */
  static boolean holds(Mapping.Entry entry, Region region) {
    return entry.key().region().contains(region) || entry.value().region().contains(region);
  }

  /** The index of the item that holds a region, or -1. */
  static int itemAt(Sequence sequence, Region region) {
    int index = lastBefore(region, sequence.items(), Node::region);
    return index >= 0 && sequence.items().get(index).region().contains(region) ? index : -1;
  }

  /**
   * The entries that are written in the mapping itself, in the order of the file. They come in that
   * order unless a mapping is written in place after a merge key.
   */
  private static List<Mapping.Entry> written(Mapping mapping) {
    List<Mapping.Entry> written = new ArrayList<>(mapping.entries().size());
    boolean inOrder = true;
    for (Mapping.Entry entry : mapping.entries()) {
      if (entry.via() == null) {
        inOrder &=
            written.isEmpty()
                || startsAfter(
                    entry.key().region(), written.get(written.size() - 1).key().region());
        written.add(entry);
      }
    }
    if (!inOrder) {
      written.sort(Comparator.comparing(entry -> entry.key().region()));
    }
    return written;
  }

  /** The index of the last of some sorted parts that does not start after a region; else -1. */
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
}
