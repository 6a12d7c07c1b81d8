package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Termination;
import org.jspecify.annotations.Nullable;

/**
 * The line when a part of the wiring is done.
 *
 * @param chain from the first item as far as the cables lead
 * @param items how many items are on the line
 * @param done the items at which all is done
 */
record LineState(List<TrackedItem> chain, int items, Set<TrackedItem> done) {
  private static final int TERMINATORS = 2;

  static LineState of(ChainStates chains, Set<TrackedItem> done) {
    Map<TrackedItem, TrackedItem> next = new HashMap<>();
    Map<TrackedItem, TrackedItem> previous = new HashMap<>();
    int items = 0;
    TrackedItem first = null;
    for (TrackedItem item : chains.all().items()) {
      Chain chain = done.contains(item) ? chains.after() : chains.before();
      if (chain.contains(item)) {
        items++;
        TrackedItem following = chain.next(item);
        if (following != null) {
          next.put(item, following);
          previous.put(following, item);
        }
      }
    }
    for (TrackedItem item : chains.all().items()) {
      Chain chain = done.contains(item) ? chains.after() : chains.before();
      if (first == null && chain.contains(item) && !previous.containsKey(item)) {
        first = item;
      }
    }
    List<TrackedItem> walked = new ArrayList<>();
    for (TrackedItem at = first; at != null; at = next.get(at)) {
      walked.add(at);
    }
    return new LineState(walked, items, done);
  }

  /** Whether it is one chain with two terminators on each segment. */
  boolean isWhole() {
    if (chain.size() != items) {
      return false;
    }
    for (List<TrackedItem> segment : segments(chain)) {
      int fitted = 0;
      for (int i = 0; i < segment.size(); i++) {
        fitted += fitted(segment.get(i), i == 0 && segment.size() > 1);
      }
      if (fitted != TERMINATORS) {
        return false;
      }
    }
    return true;
  }

  private int fitted(TrackedItem item, boolean first) {
    ChainItem now = done.contains(item) ? item.after() : item.before();
    return now instanceof Repeater repeater
        ? fitted(first ? repeater.terminationOut() : repeater.terminationIn())
        : terminators(now);
  }

  private static int fitted(Setting<Termination> setting) {
    Termination termination = setting.orNull();
    return termination != null && termination.isFitted() ? 1 : 0;
  }

  private static int terminators(@Nullable ChainItem item) {
    if (item instanceof Repeater repeater) {
      return fitted(repeater.terminationIn()) + fitted(repeater.terminationOut());
    }
    return item == null ? 0 : fitted(item.connection(Side.IN).termination());
  }

  /** How many terminators an item has in a state. */
  static int terminators(TrackedItem item, boolean later) {
    return terminators(later ? item.after() : item.before());
  }

  /** The stretches between repeaters, both included. */
  static List<List<TrackedItem>> segments(List<TrackedItem> chain) {
    List<List<TrackedItem>> segments = new ArrayList<>();
    List<TrackedItem> open = new ArrayList<>();
    for (TrackedItem item : chain) {
      open.add(item);
      if (item.latest() instanceof Repeater && open.size() > 1) {
        segments.add(open);
        open = new ArrayList<>(List.of(item));
      }
    }
    if (open.size() > 1 || (segments.isEmpty() && !open.isEmpty())) {
      segments.add(open);
    }
    return segments;
  }
}
