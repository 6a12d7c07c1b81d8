package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.ExcludedAddresses;
import org.jspecify.annotations.Nullable;

/**
 * Separates devices that share an address in the earlier state. None of them can be set over the
 * line or in its place: what one gets, all get. So all but one are set while they are off the pair,
 * one after the other, and those that leave anyway are switched off.
 *
 * @param items all items; those that are set have the address that they are set to
 * @param shared the address that each of those had, in the order of the work
 * @param leaving those that are switched off
 */
record Separation(
    List<TrackedItem> items, Map<TrackedItem, Integer> shared, List<TrackedItem> leaving) {
  Separation {
    items = List.copyOf(items);
    leaving = List.copyOf(leaving);
  }

  /** Null where there is no address left to set one to. */
  static @Nullable Separation of(List<TrackedItem> items, ExcludedAddresses keptFree) {
    Map<Integer, List<TrackedItem>> sharing = new LinkedHashMap<>();
    Set<Integer> used = new HashSet<>();
    for (TrackedItem item : items) {
      if (item.liveBefore()) {
        sharing.computeIfAbsent(item.addressBefore(), address -> new ArrayList<>()).add(item);
        used.add(item.addressBefore());
      }
    }
    Map<TrackedItem, TrackedItem> set = new HashMap<>();
    List<TrackedItem> leaving = new ArrayList<>();
    for (List<TrackedItem> group : sharing.values()) {
      TrackedItem stays = stays(group);
      for (TrackedItem item : group) {
        if (item != stays && item.after() == null) {
          leaving.add(item);
        } else if (item != stays) {
          Optional<Integer> address = address(item, items, used, keptFree);
          if (address.isEmpty()) {
            return null;
          }
          used.add(address.get());
          set.put(item, item.withAddressBefore(address.get()));
        }
      }
    }
    Map<TrackedItem, Integer> shared = new LinkedHashMap<>();
    List<TrackedItem> all = new ArrayList<>();
    for (TrackedItem item : items) {
      TrackedItem later = set.getOrDefault(item, item);
      all.add(later);
      if (later != item) {
        shared.put(later, item.addressBefore());
      }
    }
    return new Separation(all, shared, leaving);
  }

  /** The one that has the address in the end, else the one that is the hardest to set. */
  private static TrackedItem stays(List<TrackedItem> group) {
    return group.stream()
        .min(
            Comparator.comparing((TrackedItem item) -> !item.liveThroughout())
                .thenComparing(
                    item -> !item.liveAfter() || item.addressAfter() != item.addressBefore())
                .thenComparing(item -> !item.isHeadBefore())
                .thenComparing(item -> !(item.before() instanceof Equipment)))
        .orElseThrow();
  }

  /** The one that it has in the end, if nobody has it now; else a spare one. */
  private static Optional<Integer> address(
      TrackedItem item, List<TrackedItem> items, Set<Integer> used, ExcludedAddresses keptFree) {
    if (item.liveAfter() && !used.contains(item.addressAfter())) {
      return Optional.of(item.addressAfter());
    }
    Set<Integer> wanted = new HashSet<>(used);
    items.stream()
        .filter(TrackedItem::liveAfter)
        .forEach(other -> wanted.add(other.addressAfter()));
    int highest = wanted.stream().mapToInt(Integer::intValue).max().orElse(0);
    return BusAddress.SETTABLE
        .addresses()
        .filter(address -> address <= item.latest().type().addressLimit())
        .filter(address -> !wanted.contains(address) && !keptFree.contains(address))
        .boxed()
        .min(
            Comparator.comparing((Integer address) -> BusAddress.isReserved(address))
                .thenComparing(address -> address < highest)
                .thenComparing(Comparator.naturalOrder()));
  }

  /** What is found at the start, for people; null where each has an address of its own. */
  @Nullable String remark() {
    if (shared.isEmpty() && leaving.isEmpty()) {
      return null;
    }
    return "In the earlier state devices share an address: what is written to one reaches the"
        + " others too, and none can be read. Write nothing to them over the line until the steps"
        + " below have separated them.";
  }
}
