package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Vents;
import org.jspecify.annotations.Nullable;

/**
 * Which units may miss the outdoor readings during a step: those that answer then and are not taken
 * out in it, and those that are set aside for a while.
 *
 * <p>An open line is without its far terminator and perhaps without its bias, so all units of the
 * segment may miss them, and all beyond it as seen from the head unit: common practice, no source.
 */
final class ReadingsMissed {
  /** What interrupts a unit while it is set. */
  private static final Set<String> INTERRUPTING = Set.of("firmware", "comm-module");

  private final Site before;
  private final ChainStates chains;

  ReadingsMissed(Site before, ChainStates chains) {
    this.before = before;
    this.chains = chains;
  }

  List<TrackedItem> during(Phase phase) {
    List<TrackedItem> units = candidates(phase);
    Set<TrackedItem> missing = new HashSet<>(missed(phase, units));
    boolean none = hasNoReadings(phase.before()) || hasNoReadings(phase.after());
    return units.stream()
        .filter(
            unit ->
                isHeadThroughout(unit, phase)
                    ? isInterrupted(unit, phase)
                    : none
                        || missing.contains(unit)
                        || !phase.before().answering().containsKey(unit))
        .toList();
  }

  /** A head unit has its own station as long as it runs. */
  private static boolean isInterrupted(TrackedItem head, Phase phase) {
    return phase.step() instanceof Step.SetLine
        || (phase.places().contains(head) && (isolates(phase) || restarts(phase.step())));
  }

  /** Whether no unit has them once a step is done. */
  boolean noneAfter(Phase phase) {
    return hasNoReadings(phase.after());
  }

  private List<TrackedItem> candidates(Phase phase) {
    List<TrackedItem> units = new ArrayList<>();
    for (TrackedItem item : chains.all().items()) {
      boolean answers = phase.before().answering().containsKey(item);
      boolean isAside = !answers && item.liveThroughout();
      if ((item.unitBefore() != null || item.unitAfter() != null)
          && (answers || isAside)
          && !isTakenOut(item, phase)) {
        units.add(item);
      }
    }
    return units;
  }

  /** The old head unit is one more follower once another has the role. */
  private static boolean isHeadThroughout(TrackedItem item, Phase phase) {
    return phase.before().isHead(item) && phase.after().isHead(item);
  }

  /** One that another takes the place of in the same step leaves a house without a controller. */
  private static boolean isTakenOut(TrackedItem item, Phase phase) {
    return item.leaves()
        && phase.before().answering().containsKey(item)
        && !phase.after().answering().containsKey(item);
  }

  private boolean hasNoReadings(LineMoment moment) {
    return moment.answering().keySet().stream().noneMatch(moment::isHead)
        || moment.off().stream().anyMatch(item -> ItemChanges.bias(before, item.before()) != null);
  }

  private List<TrackedItem> missed(Phase phase, List<TrackedItem> units) {
    Step step = phase.step();
    if (step instanceof Step.Wire
        || step instanceof Step.Separate
        || step instanceof Step.SetAside
        || step instanceof Step.BringBack) {
      Set<TrackedItem> cut = new HashSet<>(cutOff(phase.before(), phase, units));
      cut.addAll(cutOff(phase.after(), phase, units));
      return isSettingRoles(step) ? units : List.copyOf(cut);
    }
    if (step instanceof Step.SetLine) {
      return units;
    }
    if (!restarts(step)) {
      return List.of();
    }
    return phase.places().stream().anyMatch(phase.before()::isHead)
        ? units
        : units.stream().filter(phase.places()::contains).toList();
  }

  private static boolean restarts(Step step) {
    return step instanceof Step.SetAddress
        || (step instanceof Step.SetUnit set
            && set.settings().stream().anyMatch(ReadingsMissed::interrupts));
  }

  private static boolean interrupts(ValueChange change) {
    return INTERRUPTING.contains(change.what()) || change.what().startsWith("traffic.broadcast");
  }

  private static boolean isSettingRoles(Step step) {
    return step instanceof Step.Wire wire
        && wire.places().stream()
            .flatMap(place -> place.actions().stream())
            .anyMatch(FieldAction.Set.class::isInstance);
  }

  private List<TrackedItem> cutOff(LineMoment moment, Phase phase, List<TrackedItem> units) {
    List<List<TrackedItem>> segments = LineState.segments(moment.chain(chains));
    TrackedItem head = head(moment);
    int from = head == null ? -1 : segment(segments, head);
    List<TrackedItem> cut = new ArrayList<>();
    for (TrackedItem unit : units) {
      int to = segment(segments, unit);
      if (to >= 0 && (from < 0 || isOpened(segments, from, to, phase.places()))) {
        cut.add(unit);
      }
    }
    return cut;
  }

  private static @Nullable TrackedItem head(LineMoment moment) {
    return moment.answering().keySet().stream().filter(moment::isHead).findFirst().orElse(null);
  }

  private static int segment(List<List<TrackedItem>> segments, TrackedItem unit) {
    for (int i = 0; i < segments.size(); i++) {
      if (segments.get(i).contains(unit)) {
        return i;
      }
    }
    return -1;
  }

  private static boolean isOpened(
      List<List<TrackedItem>> segments, int from, int to, List<TrackedItem> places) {
    for (int i = Math.min(from, to); i <= Math.max(from, to); i++) {
      if (segments.get(i).stream().anyMatch(places::contains)) {
        return true;
      }
    }
    return false;
  }

  /** The units with vents among those whose supply is off during a step. */
  List<TrackedItem> ventsStill(Phase phase) {
    return isolates(phase)
        ? phase.places().stream().filter(item -> mayMoveVents(item, phase.before())).toList()
        : List.of();
  }

  private static boolean isolates(Phase phase) {
    return phase.step() instanceof Step.Wire
        || phase.step() instanceof Step.SwitchOff
        || phase.step() instanceof Step.Separate
        || phase.step() instanceof Step.SetAside
        || phase.step() instanceof Step.BringBack;
  }

  /** A unit that says nothing of vents may have them; one that is not on the line moves none. */
  private static boolean mayMoveVents(TrackedItem item, LineMoment moment) {
    return moment.answering().containsKey(item)
        && ((item.unitBefore() != null && !item.unitBefore().vents().is(Vents.NONE))
            || (item.unitAfter() != null && !item.unitAfter().vents().is(Vents.NONE)));
  }
}
