package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.site.Site;

/**
 * Divides the wiring into the smallest pieces after which the line is whole: one chain, with two
 * terminators on each segment.
 *
 * <p>Two items belong to one piece where a cable between them comes or goes. A piece that does not
 * leave the line whole is joined with the next along the chain.
 */
final class Wiring {

  /** Two neighbours on a chain. */
  private record Joint(TrackedItem one, TrackedItem other) {}

  private final Site before;
  private final Site after;
  private final ChainStates chains;
  private final Map<TrackedItem, TrackedItem> group = new LinkedHashMap<>();

  private Wiring(Site before, Site after, ChainStates chains) {
    this.before = before;
    this.after = after;
    this.chains = chains;
  }

  /** The pieces of work in their order, each as the items at which something is done. */
  static List<List<TrackedItem>> pieces(Site before, Site after, ChainStates chains) {
    Wiring wiring = new Wiring(before, after, chains);
    wiring.cables();
    wiring.itemsByThemselves();
    wiring.terminators();
    wiring.bias();
    wiring.station();
    return wiring.ordered();
  }

  private void cables() {
    Set<Joint> was = joints(chains.before());
    Set<Joint> will = joints(chains.after());
    for (Joint joint : was) {
      if (!will.contains(joint)) {
        unite(List.of(joint.one(), joint.other()));
      } else if (!ItemChanges.cable(joint.one()).isEmpty()) {
        // A cable that is exchanged has two ends, and each place is opened once.
        unite(List.of(joint.one(), joint.other()));
      }
    }
    for (Joint joint : will) {
      if (!was.contains(joint)) {
        unite(List.of(joint.one(), joint.other()));
      }
    }
  }

  private static Set<Joint> joints(Chain chain) {
    Set<Joint> joints = new LinkedHashSet<>();
    for (TrackedItem item : chain.items()) {
      TrackedItem next = chain.next(item);
      if (next != null) {
        joints.add(new Joint(item, next));
      }
    }
    return joints;
  }

  private void itemsByThemselves() {
    for (TrackedItem item : chains.all().items()) {
      if (!item.stays()
          || item.isExchanged()
          || !ItemChanges.terminals(item).isEmpty()
          || !ItemChanges.cable(item).isEmpty()
          || !ItemChanges.termination(item).isEmpty()
          || !ItemChanges.bias(before, after, item).isEmpty()) {
        unite(List.of(item));
      }
    }
  }

  /** Terminators that come or go on one segment belong together. */
  private void terminators() {
    for (List<TrackedItem> segment : LineState.segments(chains.after().items())) {
      unite(
          segment.stream()
              .filter(TrackedItem::stays)
              .filter(
                  item -> LineState.terminators(item, false) != LineState.terminators(item, true))
              .toList());
    }
  }

  /** Bias that comes or goes belongs together: an idle line needs it, at one place. */
  private void bias() {
    unite(
        chains.all().items().stream()
            .filter(
                item ->
                    ItemChanges.bias(before, after, item).stream()
                        .anyMatch(change -> change.from() == null || change.to() == null))
            .toList());
  }

  /**
   * A weather station that moves leaves one unit and joins another in one piece, and so does the
   * role of the head unit: without either, no follower has readings.
   */
  private void station() {
    unite(
        chains.all().items().stream()
            .filter(
                item ->
                    !ItemChanges.station(before, after, item).isEmpty()
                        || item.isHeadBefore() != item.isHeadAfter()
                        || !UnitSettings.role(item).isEmpty())
            .toList());
  }

  private void unite(Collection<TrackedItem> items) {
    TrackedItem root = null;
    for (TrackedItem item : items) {
      group.putIfAbsent(item, item);
      if (root == null) {
        root = root(item);
      } else {
        group.put(root(item), root);
      }
    }
  }

  private TrackedItem root(TrackedItem item) {
    TrackedItem at = item;
    for (TrackedItem up = group.get(at); up != null && up != at; up = group.get(at)) {
      at = up;
    }
    return at;
  }

  private List<List<TrackedItem>> ordered() {
    Map<TrackedItem, List<TrackedItem>> groups = new LinkedHashMap<>();
    for (TrackedItem item : chains.all().items()) {
      if (group.containsKey(item)) {
        groups.computeIfAbsent(root(item), root -> new ArrayList<>()).add(item);
      }
    }
    List<List<TrackedItem>> pieces = new ArrayList<>();
    Set<TrackedItem> done = new HashSet<>();
    Set<TrackedItem> open = new LinkedHashSet<>();
    for (List<TrackedItem> next : groups.values()) {
      open.addAll(next);
      done.addAll(next);
      if (LineState.of(chains, done).isWhole()) {
        pieces.add(chains.all().items().stream().filter(open::contains).toList());
        open.clear();
      }
    }
    if (!open.isEmpty()) {
      pieces.add(chains.all().items().stream().filter(open::contains).toList());
    }
    return pieces;
  }
}
