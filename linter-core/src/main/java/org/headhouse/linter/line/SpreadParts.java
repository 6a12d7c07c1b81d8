package org.headhouse.linter.line;

import java.util.List;

/** The parts of a segment as a {@link CornerNetwork} of its differential ladder takes them. */
final class SpreadParts {
  private final List<SegmentItem> items;
  private final Tolerances tolerances;

  SpreadParts(SegmentSpread spread) {
    this.items = spread.circuit().items();
    this.tolerances = spread.tolerances();
  }

  /** Receivers that take as much as they may. */
  CornerPart fullLoads() {
    double[] most = loadSiemens();
    return new CornerPart(most, most, none());
  }

  /** Receivers that take anything from nothing to as much as they may. */
  CornerPart loads() {
    return new CornerPart(none(), loadSiemens(), none());
  }

  private double[] loadSiemens() {
    double[] siemens = none();
    for (int i = 0; i < siemens.length; i++) {
      siemens[i] = items.get(i).loadSiemens();
    }
    return siemens;
  }

  /** Terminators that pass direct current. */
  CornerPart steadyTerminators() {
    double[] siemens = none();
    for (int i = 0; i < siemens.length; i++) {
      siemens[i] = 2 * items.get(i).steadyTerminatorSiemens();
    }
    return terminators(siemens);
  }

  /** All terminators as their resistors. */
  CornerPart signalTerminators() {
    double[] siemens = none();
    for (int i = 0; i < siemens.length; i++) {
      siemens[i] = 2 * items.get(i).signalTerminatorSiemens();
    }
    return terminators(siemens);
  }

  private CornerPart terminators(double[] siemens) {
    double[] least = none();
    double[] greatest = none();
    for (int i = 0; i < siemens.length; i++) {
      least[i] = siemens[i] / (1 + tolerances.terminators());
      greatest[i] = siemens[i] / (1 - tolerances.terminators());
    }
    return new CornerPart(least, greatest, none());
  }

  /**
   * Bias resistors and their supply.
   *
   * @param supplyScale what the supply is multiplied by
   */
  CornerPart bias(double supplyScale) {
    double[] least = none();
    double[] greatest = none();
    double[] volts = none();
    for (int i = 0; i < volts.length; i++) {
      BiasResistors bias = items.get(i).bias();
      if (bias != null) {
        double tolerance = tolerances.of(bias);
        least[i] = bias.siemens() / (1 + tolerance);
        greatest[i] = bias.siemens() / (1 - tolerance);
        volts[i] = supplyScale * bias.supplyVolts();
      }
    }
    return new CornerPart(least, greatest, volts);
  }

  private double[] none() {
    return new double[items.size()];
  }
}
