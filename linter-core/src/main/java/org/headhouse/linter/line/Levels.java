package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;

/**
 * Levels, loads and resistors of TIA/EIA-485-A, as The RS-485 Design Guide, Texas Instruments
 * SLLA272, and the RS-485/RS-422 Circuit Implementation Guide, Analog Devices AN-960, give them.
 */
@Internal
public final class Levels {

  /** The difference that a receiver needs to be sure of a state (SLLA272, AN-960). */
  public static final double RECEIVER_THRESHOLD_VOLTS = 0.2;

  /** The least that a driver puts on the pair, into 54 ohms (SLLA272). */
  public static final double DRIVER_VOLTS = 1.5;

  /** What a driver must work into, at least, for {@link #DRIVER_VOLTS} (SLLA272). */
  public static final double LEAST_DRIVER_LOAD_OHMS = 54;

  /** The lowest that a conductor may be against common (SLLA272, AN-960). */
  public static final double LEAST_LINE_VOLTS = -7;

  /** The highest that a conductor may be against common (SLLA272, AN-960). */
  public static final double GREATEST_LINE_VOLTS = 12;

  /** One unit load: this resistance from each line to common (SLLA272, AN-960). */
  public static final double UNIT_LOAD_OHMS = 12_000;

  /** How many unit loads a driver carries (SLLA272, AN-960). */
  public static final double MOST_UNIT_LOADS = 32;

  /** The least of each bias resistor (MODBUS over Serial Line V1.02 §3.4.6). */
  public static final double LEAST_BIAS_OHMS = 450;

  /** The greatest of each bias resistor (MODBUS over Serial Line V1.02 §3.4.6). */
  public static final double GREATEST_BIAS_OHMS = 650;

  /**
   * Bias resistors over this are weak pulls that a device has built in (common practice, no
   * source). They count in every sum, but hold no line by themselves.
   */
  public static final double WEAK_PULL_OHMS = 2000;

  /** A supply of 5 V and a tenth more (common practice, no source). */
  public static final double MOST_BIAS_SUPPLY_VOLTS = 5.5;

  private Levels() {}

  /**
   * How far a difference lies above the receiver's threshold: {@code 20 · log10(V / 0.2 V)}.
   *
   * @param volts the difference in the wanted sense
   * @return decibels, negative under the threshold; minus infinity for a difference of zero or in
   *     the wrong sense
   */
  public static double marginDecibels(double volts) {
    return 20 * Math.log10(Math.max(volts, 0) / RECEIVER_THRESHOLD_VOLTS);
  }
}
