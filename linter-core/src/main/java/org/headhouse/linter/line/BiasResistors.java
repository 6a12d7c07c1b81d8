package org.headhouse.linter.line;

import org.jspecify.annotations.Nullable;

/**
 * Resistors that hold an idle line: one from the supply to D1, an equal one from D0 to common
 * (MODBUS over Serial Line V1.02 §3.4.6 calls this polarization).
 *
 * @param eachOhms the value of each of the two
 * @param supplyVolts the supply against common
 * @param tolerance by which the resistors may differ from their value, as a share; null where that
 *     of the segment holds
 */
public record BiasResistors(double eachOhms, double supplyVolts, @Nullable Double tolerance) {

  public BiasResistors {
    Require.positive(eachOhms, "bias resistor");
    Require.positive(supplyVolts, "bias supply");
    if (tolerance != null) {
      Require.share(tolerance, "tolerance of the bias resistors");
    }
  }

  /** Resistors of the tolerance that holds in the segment. */
  public BiasResistors(double eachOhms, double supplyVolts) {
    this(eachOhms, supplyVolts, null);
  }

  /**
   * What these and others at the same item are together (Millman): the resistors in parallel, the
   * supplies weighted by their conductances, and the greater tolerance.
   */
  public BiasResistors beside(BiasResistors other) {
    double siemens = siemens() + other.siemens();
    double supply = (sourceAmperes() + other.sourceAmperes()) / siemens;
    Double greater =
        tolerance == null || other.tolerance == null
            ? null
            : Double.valueOf(Math.max(tolerance, other.tolerance));
    return new BiasResistors(1 / siemens, supply, greater);
  }

  /** The same supply and tolerance, and other resistors. */
  BiasResistors withOhms(double other) {
    return new BiasResistors(other, supplyVolts, tolerance);
  }

  /** Whether they are only the weak pulls that a device has built in. */
  public boolean isWeak() {
    return eachOhms > Levels.WEAK_PULL_OHMS;
  }

  /** The current into the pair when it is shorted, as the differential network counts it. */
  double sourceAmperes() {
    return supplyVolts / eachOhms;
  }

  double siemens() {
    return 1 / eachOhms;
  }
}
