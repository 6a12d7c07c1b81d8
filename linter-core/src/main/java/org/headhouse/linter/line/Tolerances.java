package org.headhouse.linter.line;

/**
 * By how much what is fitted may differ from what is written on it, as shares: 0.05 is 5 % up or
 * down.
 *
 * @param resistors of bias, where an item of bias has none of its own
 * @param supply of bias
 * @param terminators their resistors
 * @param cable its length and make, beside the temperature
 */
public record Tolerances(double resistors, double supply, double terminators, double cable) {

  /** 5 % for parts that say nothing else, 2 % for the cable (common practice, no source). */
  public static final Tolerances USUAL = new Tolerances(0.05, 0.05, 0.05, 0.02);

  /** Everything is just what is written on it. */
  public static final Tolerances NONE = new Tolerances(0, 0, 0, 0);

  public Tolerances {
    Require.share(resistors, "tolerance of the bias resistors");
    Require.share(supply, "tolerance of the supply");
    Require.share(terminators, "tolerance of the terminators");
    Require.share(cable, "tolerance of the cable");
  }

  /** By how much the resistors of one bias may differ. */
  double of(BiasResistors bias) {
    Double own = bias.tolerance();
    return own == null ? resistors : own;
  }
}
