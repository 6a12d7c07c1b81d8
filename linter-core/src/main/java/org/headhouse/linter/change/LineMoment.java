package org.headhouse.linter.change;

import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * The devices of a line between two steps.
 *
 * @param answering the address at which each answers
 * @param wired the items at which all wiring is done
 * @param off devices that are switched off for good and still wired
 */
record LineMoment(
    Map<TrackedItem, Integer> answering, Set<TrackedItem> wired, Set<TrackedItem> off) {

  LineMoment {
    answering = Map.copyOf(answering);
    wired = Set.copyOf(wired);
    off = Set.copyOf(off);
  }

  /** Before any work. */
  static LineMoment before(ChainStates chains) {
    Map<TrackedItem, Integer> answering = new HashMap<>();
    for (TrackedItem item : chains.before().items()) {
      if (item.liveBefore()) {
        answering.put(item, item.addressBefore());
      }
    }
    return new LineMoment(answering, Set.of(), Set.of());
  }

  /** The same, but for one device that answers elsewhere, or not at all. */
  LineMoment with(TrackedItem item, @Nullable Integer address) {
    Map<TrackedItem, Integer> later = new HashMap<>(answering);
    if (address == null) {
      later.remove(item);
    } else {
      later.put(item, address);
    }
    return new LineMoment(later, wired, off);
  }

  LineMoment switchedOff(TrackedItem item) {
    Set<TrackedItem> later = new HashSet<>(off);
    later.add(item);
    return new LineMoment(with(item, null).answering(), wired, later);
  }

  /** A piece of wiring is done: what leaves there has left, and what joins there answers. */
  LineMoment wired(Collection<TrackedItem> piece) {
    Map<TrackedItem, Integer> later = new HashMap<>(answering);
    Set<TrackedItem> done = new HashSet<>(wired);
    Set<TrackedItem> stillOff = new HashSet<>(off);
    for (TrackedItem item : piece) {
      done.add(item);
      stillOff.remove(item);
      if (item.leaves()) {
        later.remove(item);
      }
      if (item.joins()) {
        later.put(item, item.addressAfter());
      }
    }
    return new LineMoment(later, done, stillOff);
  }

  /** Whether an item is the head unit as things are. */
  boolean isHead(TrackedItem item) {
    return wired.contains(item) ? item.isHeadAfter() : item.isHeadBefore();
  }

  /** The chain as it is wired. */
  List<TrackedItem> chain(ChainStates chains) {
    return LineState.of(chains, wired).chain();
  }
}
