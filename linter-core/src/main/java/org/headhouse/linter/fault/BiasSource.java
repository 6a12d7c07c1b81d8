package org.headhouse.linter.fault;

/**
 * Bias at one node: a resistor from its supply to D1, one from D0 to common; reversed the other way
 * round.
 *
 * @param node where it is connected
 * @param toSupply the conductance to the supply
 * @param toCommon the conductance to common
 * @param supplyVolts the supply against common
 * @param unlikeSiemens by how much the two conductances of one bias may differ
 * @param reversed whether the supply is on D0
 */
record BiasSource(
    int node,
    Span toSupply,
    Span toCommon,
    Span supplyVolts,
    double unlikeSiemens,
    boolean reversed) {

  boolean isSymmetric() {
    return toSupply.equals(toCommon);
  }

  boolean isPowered() {
    return supplyVolts.high() > 0 && toSupply.high() > 0;
  }

  BiasSource turned() {
    return new BiasSource(node, toSupply, toCommon, supplyVolts, unlikeSiemens, !reversed);
  }

  /** Without the resistor at D1, or without that at D0. */
  BiasSource half(boolean withoutD1) {
    boolean withoutSupply = withoutD1 != reversed;
    return new BiasSource(
        node,
        withoutSupply ? Span.ZERO : toSupply,
        withoutSupply ? toCommon : Span.ZERO,
        supplyVolts,
        0,
        reversed);
  }

  /** Its supply is off, and its resistors lead anywhere from nowhere to common. */
  BiasSource unpowered() {
    return new BiasSource(node, toSupply.fromZero(), toCommon.fromZero(), Span.ZERO, 0, reversed);
  }

  BiasSource movedTo(int other) {
    return new BiasSource(other, toSupply, toCommon, supplyVolts, unlikeSiemens, reversed);
  }

  Span toD1() {
    return reversed ? toCommon : toSupply;
  }

  Span toD0() {
    return reversed ? toSupply : toCommon;
  }
}
