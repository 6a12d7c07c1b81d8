package org.headhouse.linter.line;

/**
 * What may lie between each node of a ladder and the return: a conductance from a least to a
 * greatest value, in series with a source. The arrays are shared, and nobody writes into them.
 */
final class CornerPart {
  private final double[] leastSiemens;
  private final double[] greatestSiemens;
  private final double[] volts;

  /**
   * @param leastSiemens of each node
   * @param greatestSiemens of each node
   * @param volts of the source of each node, 0 without one
   */
  CornerPart(double[] leastSiemens, double[] greatestSiemens, double[] volts) {
    this.leastSiemens = leastSiemens;
    this.greatestSiemens = greatestSiemens;
    this.volts = volts;
  }

  double[] leastSiemens() {
    return leastSiemens;
  }

  double[] greatestSiemens() {
    return greatestSiemens;
  }

  double[] volts() {
    return volts;
  }
}
