package org.headhouse.linter.line;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.headhouse.linter.stability.Internal;

/** The values that resistors are sold in. */
@Internal
public final class PreferredResistor {

  /** The E24 series of IEC 60063, two digits of each decade (from memory). */
  private static final List<Integer> E24 =
      List.of(
          10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75,
          82, 91);

  private static final int E96_VALUES = 96;

  /** A computed value that misses a preferred one by less than this has only been rounded. */
  static final double ROUNDING = 1e-9;

  private PreferredResistor() {}

  /**
   * The greatest value of the E24 series that does not exceed a resistance.
   *
   * @param ohms 1 or more, finite
   */
  public static double e24AtMost(double ohms) {
    double most = checked(ohms) * (1 + ROUNDING);
    return e24(most).filter(value -> value <= most).max().orElseThrow();
  }

  /**
   * The least value of the E24 series that is not under a resistance.
   *
   * @param ohms 1 or more, finite
   */
  public static double e24AtLeast(double ohms) {
    double least = checked(ohms) * (1 - ROUNDING);
    return e24(ohms).filter(value -> value >= least).min().orElseThrow();
  }

  /**
   * The greatest value of the E96 series of IEC 60063 that does not exceed a resistance: three
   * digits of {@code 10^(i/96)}, i from 0 to 95.
   *
   * @param ohms 1 or more, finite
   */
  public static double e96AtMost(double ohms) {
    double most = checked(ohms) * (1 + ROUNDING);
    double step = Math.pow(10, Math.floor(Math.log10(most)) - 2);
    return IntStream.rangeClosed(0, E96_VALUES)
        .mapToDouble(value -> Math.round(100 * Math.pow(10, value / (double) E96_VALUES)) * step)
        .filter(value -> value <= most)
        .max()
        .orElseThrow();
  }

  /** The values of the decade of a resistance, and the first of the next. */
  private static DoubleStream e24(double ohms) {
    double step = Math.pow(10, Math.floor(Math.log10(ohms)) - 1);
    return DoubleStream.concat(
        E24.stream().mapToDouble(digits -> digits * step), DoubleStream.of(100 * step));
  }

  private static double checked(double ohms) {
    Require.positive(ohms, "resistor");
    if (ohms < 1) {
      throw new IllegalArgumentException("resistor must be 1 ohm or more: " + ohms);
    }
    return ohms;
  }
}
