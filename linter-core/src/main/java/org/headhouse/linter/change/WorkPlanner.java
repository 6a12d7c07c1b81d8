package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.headhouse.linter.change.ReaddressingOrder.Kind;
import org.headhouse.linter.change.ReaddressingOrder.Turn;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * Puts the field work in order. First, devices that join are set before they are connected, those
 * that share an address are separated, and those that leave are switched off where another gets
 * their address. Then units are set on the live line, the settings of the whole line follow, and
 * the wiring is last, so that the line is opened once at each place. What a reading needs that is
 * not measured before is set after it.
 */
final class WorkPlanner {
  private final Site before;
  private final Site after;
  private final ChainStates chains;
  private final ExcludedAddresses keptFree;
  private final List<List<TrackedItem>> pieces;
  private final NewReadings newReadings;
  private final Separation separation;
  private final List<Phase> phases = new ArrayList<>();
  private LineMoment now;

  private WorkPlanner(
      Site before,
      Site after,
      ChainStates chains,
      Separation separation,
      ExcludedAddresses keptFree) {
    this.separation = separation;
    this.keptFree = keptFree;
    this.before = before;
    this.after = after;
    this.chains = chains;
    this.pieces = Wiring.pieces(before, after, chains);
    this.newReadings = new NewReadings(before, after);
    LineMoment start = LineMoment.before(chains);
    for (Map.Entry<TrackedItem, Integer> one : separation.shared().entrySet()) {
      start = start.with(one.getKey(), one.getValue());
    }
    this.now = start;
  }

  /**
   * The work between two states in which each device has a name of its own, and in the later one an
   * address of its own.
   */
  static List<Phase> phases(
      Site before,
      Site after,
      ChainStates chains,
      Separation separation,
      ExcludedAddresses keptFree) {
    WorkPlanner planner = new WorkPlanner(before, after, chains, separation, keptFree);
    planner.prepare();
    planner.separate();
    planner.offTheLine();
    boolean sendsLess = LineChanges.sendsLess(before, after);
    if (!sendsLess) {
      planner.broadcast();
    }
    Set<TrackedItem> off = planner.leavingFirst();
    off.stream().filter(item -> !planner.now.off().contains(item)).forEach(planner::switchOff);
    off.addAll(planner.now.off());
    planner.set(off);
    if (sendsLess) {
      // Followers wait longer for a reading before it comes less often.
      planner.broadcast();
    }
    planner.polled();
    planner.line();
    planner.wire();
    planner.setNewReadings();
    return planner.phases;
  }

  private void add(Step step, LineMoment then, List<TrackedItem> places) {
    phases.add(new Phase(step, StepInverse.of(step), now, then, places));
    now = then;
  }

  private void prepare() {
    for (TrackedItem item : chains.after().items()) {
      if (item.joins()) {
        add(
            new Step.Prepare(
                item.name(),
                item.latest().type().defaultAddress().orNull(),
                item.addressAfter(),
                item.isExchanged(),
                UnitSettings.ofNew(item, after)),
            now,
            List.of());
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
          add(new Step.SetUnit(item.name(), changes), now, List.of(item));
        }
      }
    }
  }

  /** Nobody wants a shared address back: once a device has another, undoing ends there. */
  private void separate() {
    for (TrackedItem item : separation.leaving()) {
      Step step = new Step.SwitchOff(item.name(), item.addressBefore());
      addForGood(step, now.switchedOff(item), item);
    }
    separation
        .shared()
        .forEach(
            (item, from) -> {
              int to = item.addressBefore();
              boolean isSpare = !item.liveThroughout() || item.addressAfter() != to;
              addForGood(
                  new Step.Separate(item.name(), from, to, isSpare), now.with(item, to), item);
            });
  }

  private void addForGood(Step step, LineMoment then, TrackedItem item) {
    phases.add(new Phase(step, null, now, then, List.of(item)));
    now = then;
  }

  private void switchOff(TrackedItem item) {
    add(
        new Step.SwitchOff(item.name(), item.addressBefore()),
        now.switchedOff(item),
        List.of(item));
  }

  /** The devices that leave, and whose address another gets before the wiring. */
  private Set<TrackedItem> leavingFirst() {
    Set<TrackedItem> leaving = new HashSet<>();
    for (TrackedItem item : chains.before().items()) {
      if (item.leaves()) {
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
    return other.joins()
        && pieces.stream().anyMatch(piece -> piece.contains(leaving) && piece.contains(other));
  }

  private void set(Set<TrackedItem> off) {
    ReaddressingOrder.Sequences addresses =
        ReaddressingOrder.of(seats(), held(off), new ReaddressingOrder.Spares(joining(), keptFree));
    List<List<Turn>> sequences = new ArrayList<>(addresses.paths());
    for (TrackedItem item : staying()) {
      if (item.addressBefore() == item.addressAfter() && !newReadings.early(item).isEmpty()) {
        int address = item.addressAfter();
        sequences.add(List.of(new Turn(chains.after().place(item), address, address, Kind.FINAL)));
      }
    }
    VisitOrder.along(sequences, Turn::place).forEach(this::turn);
    addresses.cycles().stream()
        .sorted(Comparator.comparing((List<Turn> cycle) -> cycle.get(0).place()))
        .forEach(cycle -> cycle.forEach(this::turn));
  }

  private List<ReaddressingOrder.Seat> seats() {
    return staying().stream()
        .map(
            item ->
                new ReaddressingOrder.Seat(
                    chains.after().place(item),
                    item.addressBefore(),
                    item.addressAfter(),
                    item.latest().type().addressLimit(),
                    item.isHeadAfter(),
                    !newReadings.early(item).isEmpty()
                        || pieces.stream().anyMatch(piece -> piece.contains(item))))
        .toList();
  }

  /** Addresses that stay in use until the wiring. */
  private Set<Integer> held(Set<TrackedItem> off) {
    Set<Integer> held = new HashSet<>();
    for (TrackedItem item : chains.before().items()) {
      if (item.leaves() && !off.contains(item)) {
        held.add(item.addressBefore());
      }
    }
    return held;
  }

  private Set<Integer> joining() {
    Set<Integer> joining = new HashSet<>();
    for (TrackedItem item : chains.after().items()) {
      if (item.joins()) {
        joining.add(item.addressAfter());
      }
    }
    return joining;
  }

  private List<TrackedItem> staying() {
    return chains.after().items().stream().filter(TrackedItem::liveThroughout).toList();
  }

  private void turn(Turn turn) {
    TrackedItem item = chains.after().items().get(turn.place());
    List<ValueChange> settings = newReadings.early(item);
    String name = item.name();
    Step step =
        switch (turn.kind()) {
          case SPARE -> new Step.SetAddress(name, turn.from(), turn.to(), true, List.of());
          case ASIDE -> new Step.SetAside(name, turn.from(), turn.to(), List.of());
          case BACK -> new Step.BringBack(name, turn.to(), settings);
          case FINAL ->
              turn.from() == turn.to()
                  ? new Step.SetUnit(name, settings)
                  : new Step.SetAddress(name, turn.from(), turn.to(), false, settings);
        };
    Integer address = turn.kind() == Kind.ASIDE ? null : turn.to();
    add(step, now.with(item, address), List.of(item));
  }

  /** What the head unit sends, where it is the same unit before and after. */
  private void broadcast() {
    TrackedItem head = head();
    List<ValueChange> settings = new ArrayList<>(LineChanges.broadcast(before, after));
    settings.addAll(LineChanges.averaging(before, after));
    if (head != null && !settings.isEmpty()) {
      add(new Step.SetUnit(head.name(), settings), now, List.of(head));
    }
  }

  private @Nullable TrackedItem head() {
    return staying().stream()
        .filter(item -> item.isHeadBefore() && item.isHeadAfter())
        .findFirst()
        .orElse(null);
  }

  /** How the head unit asks other devices that stay. */
  private void polled() {
    TrackedItem head = head();
    List<ValueChange> settings = new ArrayList<>();
    for (TrackedItem item : staying()) {
      settings.addAll(PolledByHead.changes(item));
    }
    if (head != null && !settings.isEmpty()) {
      add(new Step.SetUnit(head.name(), settings), now, List.of(head));
    }
  }

  /**
   * The head unit last: each follower has the readings until it is set. Those that leave later are
   * set as well, so that none is without readings until then.
   */
  private void line() {
    List<ValueChange> serial = LineChanges.serial(before, after);
    if (!serial.isEmpty()) {
      List<TrackedItem> units =
          new ArrayList<>(
              chains.all().items().stream().filter(now.answering()::containsKey).toList());
      units.sort(Comparator.comparing(now::isHead));
      add(new Step.SetLine(serial, units.stream().map(TrackedItem::name).toList()), now, units);
    }
  }

  private void wire() {
    PieceOfWiring wiring = new PieceOfWiring(before, after, chains);
    for (List<TrackedItem> piece : pieces) {
      LineMoment then = now.wired(piece);
      wiring
          .of(piece, now)
          .ifPresentOrElse(
              one -> {
                Step back = new Step.Wire(one.back(), List.of());
                phases.add(
                    new Phase(
                        new Step.Wire(one.places(), List.of()), back, now, then, one.opened()));
              },
              () -> {});
      now = then;
    }
  }

  private void setNewReadings() {
    for (TrackedItem item : staying()) {
      List<ValueChange> late = newReadings.late(item);
      if (!late.isEmpty()) {
        add(new Step.SetUnit(item.name(), late), now, List.of(item));
      }
    }
  }
}
