package org.headhouse.linter.line;

import org.jspecify.annotations.Nullable;

/**
 * What one place of the chain connects to the pair: a unit, one side of a repeater, equipment or a
 * converter. All of them load the line, receive and send.
 *
 * @param name as people call it; need not be unique
 * @param unitLoads in units of 12 kΩ from each conductor to common
 * @param terminator across the pair, or null
 * @param bias resistors to its supply, or null
 */
public record SegmentItem(
    String name, double unitLoads, @Nullable Terminator terminator, @Nullable BiasResistors bias) {

  public SegmentItem {
    Require.notNegative(unitLoads, "unit loads");
  }

  SegmentItem with(@Nullable Terminator otherTerminator, @Nullable BiasResistors otherBias) {
    return new SegmentItem(name, unitLoads, otherTerminator, otherBias);
  }

  SegmentItem withUnitLoads(double other) {
    return new SegmentItem(name, other, terminator, bias);
  }

  /** The conductance of the load from each conductor to common. */
  double loadSiemens() {
    return unitLoads / Levels.UNIT_LOAD_OHMS;
  }

  double biasSiemens() {
    return bias == null ? 0 : bias.siemens();
  }

  double biasAmperes() {
    return bias == null ? 0 : bias.sourceAmperes();
  }

  double steadyTerminatorSiemens() {
    return terminator == null ? 0 : terminator.steadySiemens();
  }

  double signalTerminatorSiemens() {
    return terminator == null ? 0 : terminator.signalSiemens();
  }
}
