package org.headhouse.linter.line;

/**
 * How far a meter may be off: a share of what it shows, and a fixed part that its last digits and
 * its leads make.
 *
 * @param shareOfReading 0.01 is 1 %
 * @param fixed in the unit of the reading
 */
public record MeterAccuracy(double shareOfReading, double fixed) {

  /** A hand meter on direct volts: 1 % and 3 mV (common practice, no source). */
  public static final MeterAccuracy HAND_METER_VOLTS = new MeterAccuracy(0.01, 0.003);

  /**
   * A hand meter on ohms: 1 %, three tenths for digits, half an ohm for leads (common practice, no
   * source).
   */
  public static final MeterAccuracy HAND_METER_OHMS = new MeterAccuracy(0.01, 0.8);

  public MeterAccuracy {
    Require.share(shareOfReading, "share of the reading");
    Require.notNegative(fixed, "fixed error");
  }

  /** How far what is measured may lie from a reading: {@code share · |reading| + fixed}. */
  public double errorOf(double reading) {
    return shareOfReading * Math.abs(reading) + fixed;
  }

  /**
   * The least reading that proves a limit: that which is at least the limit with the error taken
   * off, {@code (limit + fixed) / (1 − share)}.
   *
   * @param limit 0 or more
   */
  public double leastReadingFor(double limit) {
    Require.notNegative(limit, "limit");
    return (limit + fixed) / (1 - shareOfReading);
  }

  /** Whether a reading can be that of a value between two, the error granted. */
  public boolean canBe(double reading, double low, double high) {
    double error = errorOf(reading);
    return reading + error >= low && reading - error <= high;
  }
}
