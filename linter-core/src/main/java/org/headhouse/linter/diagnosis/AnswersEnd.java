package org.headhouse.linter.diagnosis;

import org.headhouse.linter.fault.Fault;
import org.headhouse.linter.fault.FaultKind;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * Which faults of a segment can leave some item as the first that does not answer.
 *
 * <p>Only what is sure counts: beyond a pair that is open or shorted nobody answers, and neither
 * does a unit without power or with swapped conductors. Any fault may silence others as well, with
 * reflections, too weak a signal or a line that is never idle, so an earlier item can always be the
 * first; but not where nothing on the line has changed for the others.
 */
final class AnswersEnd {
  private static final int NOWHERE = Integer.MAX_VALUE;

  private final Site site;
  private final SegmentLine line;
  private final int head;
  private final int near;

  /**
   * @param head the index of the head unit in the chain
   */
  AnswersEnd(Site site, SegmentLine line, int head) {
    this.site = site;
    this.line = line;
    this.head = head;
    int first = line.segment().first().index();
    this.near = Math.max(0, head - first);
  }

  /** Whether an item can be the first that is silent. */
  boolean fits(Fault fault, ChainItem silent) {
    boolean alone =
        fault.kind() == FaultKind.UNIT_UNPOWERED && isAlone(fault.from()) && fault.from() != near;
    if (alone) {
      return silent.index() == chainIndex(fault.from());
    }
    return silent.index() <= firstUnitFrom(silentFrom(fault));
  }

  /** Whether nothing of the line goes with its supply. */
  private boolean isAlone(int item) {
    ChainItem at = line.segment().items().get(item);
    return !(at instanceof Repeater)
        && line.biases().stream().noneMatch(bias -> line.itemOf(bias) == item);
  }

  /** The index in the chain from which on nobody answers for sure. */
  private int silentFrom(Fault fault) {
    return switch (fault.kind()) {
      case CONDUCTOR_OPEN ->
          fault.onD1() && fault.onD0() && fault.from() >= near ? chainIndex(fault.to()) : NOWHERE;
      case PAIR_SHORTED -> fault.from() >= near ? beyond(fault.to()) : NOWHERE;
      case UNIT_UNPOWERED, CONDUCTORS_SWAPPED -> beyond(fault.from());
      default -> NOWHERE;
    };
  }

  /** Where it is the head unit, all others; where a repeater, all after it. */
  private int beyond(int item) {
    int index = chainIndex(item);
    boolean passesOn = line.segment().items().get(item) instanceof Repeater;
    if (index < head) {
      return NOWHERE;
    }
    return index == head ? head + 1 : index + (passesOn ? 1 : 0);
  }

  private int chainIndex(int item) {
    return line.segment().items().get(item).index();
  }

  private int firstUnitFrom(int index) {
    for (int at = index; at < site.items().size() && index != NOWHERE; at++) {
      if (site.items().get(at) instanceof Unit) {
        return at;
      }
    }
    return NOWHERE;
  }
}
