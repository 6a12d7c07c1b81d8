package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.change.ReaddressingOrder.Kind;
import org.headhouse.linter.change.ReaddressingOrder.Turn;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * Puts the field work in order. First, units that join are set before they are connected, and units
 * that leave are switched off where another gets their address. Then units are set on the live
 * line, the settings of the whole line follow, and the wiring is last, so that the line is opened
 * once at each place.
 */
final class WorkPlanner {
  private final Site before;
  private final Site after;
  private final ChainStates chains;
  private final ExcludedAddresses keptFree;
  private final List<List<TrackedItem>> pieces;
  private final List<Step> steps = new ArrayList<>();

  private WorkPlanner(Site before, Site after, ChainStates chains, ExcludedAddresses keptFree) {
    this.keptFree = keptFree;
    this.before = before;
    this.after = after;
    this.chains = chains;
    this.pieces = Wiring.pieces(before, after, chains);
  }

  /** The work between two states in which each unit has a name and an address of its own. */
  static List<Step> steps(Site before, Site after, ChainStates chains, ExcludedAddresses keptFree) {
    WorkPlanner planner = new WorkPlanner(before, after, chains, keptFree);
    planner.prepare();
    planner.offTheLine();
    Set<TrackedItem> off = planner.leavingFirst();
    off.forEach(item -> planner.steps.add(new Step.SwitchOff(item.name(), item.addressBefore())));
    planner.set(off);
    planner.roles();
    planner.line();
    PieceOfWiring wiring = new PieceOfWiring(before, after, chains);
    planner.pieces.forEach(piece -> wiring.step(piece).ifPresent(planner.steps::add));
    return planner.steps;
  }

  private void prepare() {
    for (TrackedItem item : chains.after().items()) {
      Unit unit = item.unitAfter();
      if (unit != null && item.liveAfter() && !item.liveBefore()) {
        steps.add(
            new Step.Prepare(
                item.name(),
                unit.type().defaultAddress().orNull(),
                item.addressAfter(),
                UnitSettings.ofNew(item, unit, after)));
      }
    }
  }

  /** Units that are not on the line in either state can be set at any time. */
  private void offTheLine() {
    for (TrackedItem item : chains.after().items()) {
      if (item.unitBefore() != null
          && item.unitAfter() != null
          && !item.liveBefore()
          && !item.liveAfter()) {
        List<ValueChange> changes = new ArrayList<>();
        SettingComparison.compare(
            "address", item.unitBefore().address(), item.unitAfter().address(), changes);
        changes.addAll(UnitSettings.changed(item));
        if (!changes.isEmpty()) {
          steps.add(new Step.SetUnit(item.name(), changes));
        }
      }
    }
  }

  /** The units that leave, and whose address another gets before the wiring. */
  private Set<TrackedItem> leavingFirst() {
    Set<TrackedItem> leaving = new HashSet<>();
    for (TrackedItem item : chains.before().items()) {
      if (item.liveBefore() && !item.liveAfter()) {
        for (TrackedItem other : chains.after().items()) {
          if (other.liveAfter()
              && other.addressAfter() == item.addressBefore()
              && !comesInTheSamePiece(item, other)) {
            leaving.add(item);
          }
        }
      }
    }
    return new LinkedHashSet<>(chains.before().items().stream().filter(leaving::contains).toList());
  }

  private boolean comesInTheSamePiece(TrackedItem leaving, TrackedItem other) {
    return !other.liveBefore()
        && pieces.stream().anyMatch(piece -> piece.contains(leaving) && piece.contains(other));
  }

  private void set(Set<TrackedItem> off) {
    ReaddressingOrder.Sequences addresses =
        ReaddressingOrder.of(seats(), held(off), new ReaddressingOrder.Spares(joining(), keptFree));
    List<List<Turn>> sequences = new ArrayList<>(addresses.paths());
    for (TrackedItem item : staying()) {
      if (item.addressBefore() == item.addressAfter() && !UnitSettings.changed(item).isEmpty()) {
        int address = item.addressAfter();
        sequences.add(List.of(new Turn(chains.after().place(item), address, address, Kind.FINAL)));
      }
    }
    VisitOrder.along(sequences, Turn::place).forEach(turn -> steps.add(step(turn)));
    addresses.cycles().stream()
        .sorted(Comparator.comparing((List<Turn> cycle) -> cycle.get(0).place()))
        .forEach(cycle -> cycle.forEach(turn -> steps.add(step(turn))));
  }

  private List<ReaddressingOrder.Seat> seats() {
    return staying().stream()
        .map(
            item ->
                new ReaddressingOrder.Seat(
                    chains.after().place(item),
                    item.addressBefore(),
                    item.addressAfter(),
                    item.unitAfter() == null ? 0 : item.unitAfter().type().addressLimit(),
                    item.isHeadAfter(),
                    !UnitSettings.changed(item).isEmpty()
                        || pieces.stream().anyMatch(piece -> piece.contains(item))))
        .toList();
  }

  /** Addresses that stay in use until the wiring. */
  private Set<Integer> held(Set<TrackedItem> off) {
    Set<Integer> held = new HashSet<>();
    for (TrackedItem item : chains.before().items()) {
      if (item.liveBefore() && !item.liveAfter() && !off.contains(item)) {
        held.add(item.addressBefore());
      }
    }
    return held;
  }

  private Set<Integer> joining() {
    Set<Integer> joining = new HashSet<>();
    for (TrackedItem item : chains.after().items()) {
      if (item.liveAfter() && !item.liveBefore()) {
        joining.add(item.addressAfter());
      }
    }
    return joining;
  }

  private List<TrackedItem> staying() {
    return chains.after().items().stream().filter(TrackedItem::liveThroughout).toList();
  }

  private Step step(Turn turn) {
    TrackedItem item = chains.after().items().get(turn.place());
    List<ValueChange> settings = UnitSettings.changed(item);
    String name = item.name();
    return switch (turn.kind()) {
      case SPARE -> new Step.SetAddress(name, turn.from(), turn.to(), true, List.of());
      case ASIDE -> new Step.SetAside(name, turn.from(), turn.to());
      case BACK -> new Step.BringBack(name, turn.to(), settings);
      case FINAL ->
          turn.from() == turn.to()
              ? new Step.SetUnit(name, settings)
              : new Step.SetAddress(name, turn.from(), turn.to(), false, settings);
    };
  }

  /** The old head unit first: so there are never two head units, and only briefly none. */
  private void roles() {
    List<TrackedItem> changing =
        staying().stream().filter(item -> !UnitSettings.role(item).isEmpty()).toList();
    for (Role role : List.of(Role.FOLLOWER, Role.HEAD)) {
      for (TrackedItem item : changing) {
        if (item.unitAfter() != null && item.unitAfter().role().is(role)) {
          steps.add(new Step.SetUnit(item.name(), UnitSettings.role(item)));
        }
      }
    }
  }

  private void line() {
    List<ValueChange> serial = LineChanges.serial(before, after);
    if (!serial.isEmpty()) {
      List<TrackedItem> units = new ArrayList<>(staying());
      units.sort(Comparator.comparing(item -> !item.isHeadAfter()));
      steps.add(new Step.SetLine(serial, units.stream().map(TrackedItem::name).toList()));
    }
  }
}
