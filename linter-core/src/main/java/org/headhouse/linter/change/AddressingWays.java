package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.change.ReaddressingOrder.Kind;
import org.headhouse.linter.change.ReaddressingOrder.Turn;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/** Compares the ways of giving addresses to units that join a commissioned line. */
final class AddressingWays {
  private final ChainStates chains;
  private final ExcludedAddresses keptFree;
  private final Set<TrackedItem> visitedAnyway = new HashSet<>();
  private int separated;

  private AddressingWays(ChainStates chains, ExcludedAddresses keptFree, List<Phase> phases) {
    this.chains = chains;
    this.keptFree = keptFree;
    for (Phase phase : phases) {
      // Either way begins with these.
      separated += phase.step() instanceof Step.Separate ? 1 : 0;
      if (!isOnlyReaddressing(phase.step())) {
        visitedAnyway.addAll(phase.places());
      }
    }
  }

  /** Both ways; a way is missing where it would need an address that a unit cannot have. */
  static List<AddressingWay> of(
      Site before, ChainStates chains, ExcludedAddresses keptFree, List<Phase> phases) {
    boolean joins = chains.after().items().stream().anyMatch(AddressingWays::isNewUnit);
    if (!joins
        || !before.wasCommissioned()
        || chains.after().items().stream()
            .anyMatch(item -> isNewUnit(item) && item.isHeadAfter())) {
      return List.of();
    }
    AddressingWays ways = new AddressingWays(chains, keptFree, phases);
    return Stream.of(
            ways.way(AddressingWay.Kind.NEXT_FREE, ways.nextFree()),
            ways.way(AddressingWay.Kind.CHAIN_ORDER, ways.chainOrder()))
        .flatMap(Stream::ofNullable)
        .toList();
  }

  private static boolean isNewUnit(TrackedItem item) {
    return item.unitAfter() != null && item.liveAfter() && item.before() == null;
  }

  private static boolean isOnlyReaddressing(Step step) {
    return step instanceof Step.SetAside
        || (step instanceof Step.SetAddress set && set.settings().isEmpty())
        || (step instanceof Step.BringBack back && back.settings().isEmpty());
  }

  private Map<TrackedItem, Integer> nextFree() {
    int highest = 0;
    for (TrackedItem item : chains.all().items()) {
      if (item.liveBefore()) {
        highest = Math.max(highest, item.addressBefore());
      }
      if (item.liveAfter() && item.unitAfter() == null) {
        highest = Math.max(highest, item.addressAfter());
      }
    }
    Map<TrackedItem, Integer> targets = new LinkedHashMap<>();
    for (TrackedItem item : chains.after().items()) {
      if (item.liveAfter()) {
        if (item.unitAfter() == null || !item.liveBefore()) {
          highest = item.unitAfter() == null ? highest : keptFree.nextOther(highest);
          targets.put(item, item.unitAfter() == null ? item.addressAfter() : highest);
        } else {
          targets.put(item, item.addressBefore());
        }
      }
    }
    return targets;
  }

  private Map<TrackedItem, Integer> chainOrder() {
    Map<TrackedItem, Integer> targets = new LinkedHashMap<>();
    int address = 0;
    for (TrackedItem item : chains.after().items()) {
      if (item.unitAfter() != null) {
        address = keptFree.nextOther(address);
        if (item.liveAfter()) {
          targets.put(item, address);
        }
      } else if (item.liveAfter()) {
        targets.put(item, item.addressAfter());
      }
    }
    return targets;
  }

  private @Nullable AddressingWay way(AddressingWay.Kind kind, Map<TrackedItem, Integer> targets) {
    if (new HashSet<>(targets.values()).size() < targets.size()) {
      // Other equipment is at an address that this way needs.
      return null;
    }
    Map<String, Integer> addresses = new LinkedHashMap<>();
    boolean asWritten = true;
    for (Map.Entry<TrackedItem, Integer> target : targets.entrySet()) {
      TrackedItem item = target.getKey();
      int address = target.getValue();
      if (address > Math.min(item.latest().type().addressLimit(), BusAddress.STANDARD.to())) {
        return null;
      }
      asWritten &= address == item.addressAfter();
      if (!item.liveBefore() || item.addressBefore() != address) {
        addresses.put(item.name(), address);
      }
    }
    List<Turn> turns = turns(targets);
    Set<TrackedItem> visited = new HashSet<>(visitedAnyway);
    turns.forEach(turn -> visited.add(chains.after().items().get(turn.place())));
    int again =
        (int)
            turns.stream()
                .filter(turn -> turn.kind() == Kind.SPARE || turn.kind() == Kind.ASIDE)
                .count();
    int settings =
        separated + (int) turns.stream().filter(turn -> turn.kind() != Kind.BACK).count();
    return new AddressingWay(kind, addresses, settings, visited.size() + again, asWritten);
  }

  private List<Turn> turns(Map<TrackedItem, Integer> targets) {
    List<ReaddressingOrder.Seat> seats = new ArrayList<>();
    Set<Integer> joining = new HashSet<>();
    targets.forEach(
        (item, address) -> {
          if (item.liveThroughout()) {
            seats.add(
                new ReaddressingOrder.Seat(
                    chains.after().place(item),
                    item.addressBefore(),
                    address,
                    item.latest().type().addressLimit(),
                    item.isHeadAfter(),
                    visitedAnyway.contains(item)));
          } else {
            joining.add(address);
          }
        });
    Set<Integer> held = new HashSet<>();
    for (TrackedItem item : chains.before().items()) {
      // One whose address is wanted is switched off first.
      if (item.leaves() && !targets.containsValue(item.addressBefore())) {
        held.add(item.addressBefore());
      }
    }
    ReaddressingOrder.Sequences sequences =
        ReaddressingOrder.of(seats, held, new ReaddressingOrder.Spares(joining, keptFree));
    return Stream.of(sequences.paths(), sequences.cycles())
        .flatMap(List::stream)
        .flatMap(List::stream)
        .toList();
  }
}
