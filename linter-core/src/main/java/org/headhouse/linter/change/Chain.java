package org.headhouse.linter.change;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** Items in the order of a chain. */
final class Chain {
  private final List<TrackedItem> items;
  private final Map<TrackedItem, Integer> places = new HashMap<>();

  Chain(List<TrackedItem> items) {
    this.items = List.copyOf(items);
    for (int i = 0; i < this.items.size(); i++) {
      places.put(this.items.get(i), i);
    }
  }

  List<TrackedItem> items() {
    return items;
  }

  boolean contains(TrackedItem item) {
    return places.containsKey(item);
  }

  /** From 0; -1 for what is not on the chain. */
  int place(TrackedItem item) {
    return places.getOrDefault(item, -1);
  }

  @Nullable TrackedItem previous(TrackedItem item) {
    int at = place(item);
    return at <= 0 ? null : items.get(at - 1);
  }

  @Nullable TrackedItem next(TrackedItem item) {
    int at = place(item);
    return at < 0 || at + 1 == items.size() ? null : items.get(at + 1);
  }
}
