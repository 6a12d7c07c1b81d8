package org.headhouse.linter.change;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.proof.Proof;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * Where the pair is measured in the course of the wiring: with the last piece that opens a segment,
 * whose supplies are off anyway or nearly so, and not in a visit of its own.
 *
 * <p>It has to know which items a piece opens. One that is only isolated for the meter, such as the
 * repeater that two segments share, makes no piece the last of the other segment.
 */
final class DueMeasurements {
  private final Site after;
  private final List<Phase> phases;
  private final List<Proof> due;

  DueMeasurements(Site after, List<Phase> phases, List<Difference> differences) {
    this.after = after;
    this.phases = phases;
    this.due = DueProofs.of(after, differences);
  }

  /** What is measured in a step; nothing where it is no wiring. */
  List<Proof> in(Phase phase) {
    List<Proof> measured = new ArrayList<>();
    for (Proof proof : phase.step() instanceof Step.Wire ? due : List.<Proof>of()) {
      if (proof.kind().isMeasured()
          && segments(proof).stream().anyMatch(segment -> phase.equals(last(segment)))) {
        measured.add(proof);
      }
    }
    return measured;
  }

  /** All that is isolated: what is opened, and for a resistance the whole of the segment. */
  List<TrackedItem> isolated(Phase phase, ChainStates chains) {
    Set<TrackedItem> isolated = new LinkedHashSet<>(phase.places());
    for (Proof proof : in(phase)) {
      if (proof.kind() == Proof.Kind.PAIR_RESISTANCE) {
        for (Segment segment : segments(proof)) {
          isolated.addAll(
              chains.after().items().stream().filter(item -> contains(segment, item)).toList());
        }
      }
    }
    return chains.all().items().stream().filter(isolated::contains).toList();
  }

  private static boolean contains(Segment segment, TrackedItem item) {
    return segment.items().stream().anyMatch(one -> one.isSameItemAs(item.after()));
  }

  private List<Segment> segments(Proof proof) {
    List<Segment> found = new ArrayList<>();
    for (Segment segment : after.segments()) {
      for (ChainItem item : segment.items()) {
        Side side = item instanceof Repeater ? segment.side(item) : null;
        if (item.name().is(proof.at()) && side == proof.side()) {
          found.add(segment);
        }
      }
    }
    return found;
  }

  /** Null where no piece opens the segment: it is measured when the line is proved. */
  private @Nullable Phase last(Segment segment) {
    Phase last = null;
    for (Phase phase : phases) {
      if (phase.step() instanceof Step.Wire
          && phase.places().stream().anyMatch(item -> contains(segment, item))) {
        last = phase;
      }
    }
    return last;
  }
}
