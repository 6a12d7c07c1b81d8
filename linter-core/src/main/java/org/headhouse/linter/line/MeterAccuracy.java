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

  /**
   * All readings that can be those of a value between two: what is measured is at most {@code share
   * · |reading| + fixed} away from the reading.
   *
   * @param high may be {@link Double#POSITIVE_INFINITY}
   */
  public ReadingRange readings(double low, double high) {
    double least = low - fixed;
    double most = high + fixed;
    return new ReadingRange(
        least / (1 + Math.copySign(shareOfReading, least)),
        most / (1 - Math.copySign(shareOfReading, most)));
  }
}
