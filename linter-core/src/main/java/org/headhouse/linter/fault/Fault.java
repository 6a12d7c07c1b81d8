package org.headhouse.linter.fault;

/**
 * One thing that is wrong with a segment.
 *
 * @param kind what it is
 * @param from the index of the item, or of the item before the hop
 * @param to the index of the item after the hop; that of {@code from} for a fault at an item
 * @param onD1 whether D1, or the resistor at D1, is concerned; only where that makes a difference
 * @param onD0 the same of D0
 */
public record Fault(FaultKind kind, int from, int to, boolean onD1, boolean onD0) {

  public Fault {
    if (from < 0 || (to != from && to != from + 1)) {
      throw new IllegalArgumentException("no place for a fault: " + from + ", " + to);
    }
  }

  static Fault at(FaultKind kind, int item) {
    return new Fault(kind, item, item, false, false);
  }

  static Fault inHop(FaultKind kind, int hop) {
    return new Fault(kind, hop, hop + 1, false, false);
  }

  /** Whether it is between two items. */
  public boolean isInHop() {
    return to != from;
  }
}
