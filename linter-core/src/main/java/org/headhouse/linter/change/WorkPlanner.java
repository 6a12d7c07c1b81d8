package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.change.AddressOrder.Kind;
import org.headhouse.linter.change.AddressOrder.Turn;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Role;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * Puts the field work in order: what joins is set off the line; what leaves and has an address that
 * is wanted is switched off; units are set while the line is up; then the line's own settings, and
 * the wiring at last, so that the line is opened once at each place.
 */
final class WorkPlanner {
  private final Site before;
  private final Site after;
  private final Chains chains;
  private final ExcludedAddresses keptFree;
  private final List<List<Member>> pieces;
  private final List<Step> steps = new ArrayList<>();

  private WorkPlanner(Site before, Site after, Chains chains, ExcludedAddresses keptFree) {
    this.keptFree = keptFree;
    this.before = before;
    this.after = after;
    this.chains = chains;
    this.pieces = Wiring.pieces(before, after, chains);
  }

  /** The work between two states in which each unit has a name and an address of its own. */
  static List<Step> steps(Site before, Site after, Chains chains, ExcludedAddresses keptFree) {
    WorkPlanner planner = new WorkPlanner(before, after, chains, keptFree);
    planner.prepare();
    planner.offTheLine();
    Set<Member> off = planner.leavingFirst();
    off.forEach(
        member -> planner.steps.add(new Step.SwitchOff(member.name(), member.addressBefore())));
    planner.set(off);
    planner.roles();
    planner.line();
    PieceOfWiring wiring = new PieceOfWiring(before, after, chains);
    planner.pieces.forEach(piece -> wiring.step(piece).ifPresent(planner.steps::add));
    return planner.steps;
  }

  private void prepare() {
    for (Member member : chains.after().members()) {
      Unit unit = member.unitAfter();
      if (unit != null && member.liveAfter() && !member.liveBefore()) {
        steps.add(
            new Step.Prepare(
                member.name(),
                unit.type().defaultAddress().orNull(),
                member.addressAfter(),
                UnitSettings.ofNew(member, unit, after)));
      }
    }
  }

  /** Units that are not on the line in either state are in nobody's way. */
  private void offTheLine() {
    for (Member member : chains.after().members()) {
      if (member.unitBefore() != null
          && member.unitAfter() != null
          && !member.liveBefore()
          && !member.liveAfter()) {
        List<Change> changes = new ArrayList<>();
        Written.compare(
            "address", member.unitBefore().address(), member.unitAfter().address(), changes);
        changes.addAll(UnitSettings.changed(member));
        if (!changes.isEmpty()) {
          steps.add(new Step.SetUnit(member.name(), changes));
        }
      }
    }
  }

  /** The units whose address somebody takes before they are taken out. */
  private Set<Member> leavingFirst() {
    Set<Member> leaving = new HashSet<>();
    for (Member member : chains.before().members()) {
      if (member.liveBefore() && !member.liveAfter()) {
        for (Member other : chains.after().members()) {
          if (other.liveAfter()
              && other.addressAfter() == member.addressBefore()
              && !comesInTheSamePiece(member, other)) {
            leaving.add(member);
          }
        }
      }
    }
    return new LinkedHashSet<>(
        chains.before().members().stream().filter(leaving::contains).toList());
  }

  private boolean comesInTheSamePiece(Member leaving, Member other) {
    return !other.liveBefore()
        && pieces.stream().anyMatch(piece -> piece.contains(leaving) && piece.contains(other));
  }

  private void set(Set<Member> off) {
    AddressOrder.Sequences addresses =
        AddressOrder.of(seats(), held(off), new AddressOrder.Spares(joining(), keptFree));
    List<List<Turn>> sequences = new ArrayList<>(addresses.paths());
    for (Member member : staying()) {
      if (member.addressBefore() == member.addressAfter()
          && !UnitSettings.changed(member).isEmpty()) {
        int address = member.addressAfter();
        sequences.add(
            List.of(new Turn(chains.after().place(member), address, address, Kind.FINAL)));
      }
    }
    Walk.along(sequences, Turn::place).forEach(turn -> steps.add(step(turn)));
    addresses.cycles().stream()
        .sorted(Comparator.comparing((List<Turn> cycle) -> cycle.get(0).place()))
        .forEach(cycle -> cycle.forEach(turn -> steps.add(step(turn))));
  }

  private List<AddressOrder.Seat> seats() {
    return staying().stream()
        .map(
            member ->
                new AddressOrder.Seat(
                    chains.after().place(member),
                    member.addressBefore(),
                    member.addressAfter(),
                    member.unitAfter() == null ? 0 : member.unitAfter().type().addressLimit(),
                    member.isHeadAfter(),
                    !UnitSettings.changed(member).isEmpty()
                        || pieces.stream().anyMatch(piece -> piece.contains(member))))
        .toList();
  }

  /** Addresses that stay in use until the wiring. */
  private Set<Integer> held(Set<Member> off) {
    Set<Integer> held = new HashSet<>();
    for (Member member : chains.before().members()) {
      if (member.liveBefore() && !member.liveAfter() && !off.contains(member)) {
        held.add(member.addressBefore());
      }
    }
    return held;
  }

  private Set<Integer> joining() {
    Set<Integer> joining = new HashSet<>();
    for (Member member : chains.after().members()) {
      if (member.liveAfter() && !member.liveBefore()) {
        joining.add(member.addressAfter());
      }
    }
    return joining;
  }

  private List<Member> staying() {
    return chains.after().members().stream().filter(Member::liveThroughout).toList();
  }

  private Step step(Turn turn) {
    Member member = chains.after().members().get(turn.place());
    List<Change> settings = UnitSettings.changed(member);
    String name = member.name();
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

  /** One after the other, so that there are never two head units, and none only for a moment. */
  private void roles() {
    List<Member> changing =
        staying().stream().filter(member -> !UnitSettings.role(member).isEmpty()).toList();
    for (Role role : List.of(Role.FOLLOWER, Role.HEAD)) {
      for (Member member : changing) {
        if (member.unitAfter() != null && member.unitAfter().role().is(role)) {
          steps.add(new Step.SetUnit(member.name(), UnitSettings.role(member)));
        }
      }
    }
  }

  private void line() {
    List<Change> serial = LineChanges.serial(before, after);
    if (!serial.isEmpty()) {
      List<Member> units = new ArrayList<>(staying());
      units.sort(Comparator.comparing(member -> !member.isHeadAfter()));
      steps.add(new Step.SetLine(serial, units.stream().map(Member::name).toList()));
    }
  }
}
