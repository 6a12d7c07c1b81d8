package org.headhouse.linter.line;

import org.jspecify.annotations.Nullable;

/**
 * Bias resistors that do, within the 450 to 650 ohm of MODBUS over Serial Line V1.02 §3.4.6.
 *
 * @param item where they are fitted, its index in the segment
 * @param mostOhms the most that each of the two may be; every value from 450 ohm to this does
 * @param standardOhms the greatest value on sale among them, of E24, else of E96; null where
 *     neither series has one
 */
public record BiasChoice(int item, double mostOhms, @Nullable Double standardOhms) {

  /** Null where resistors of the least that is allowed are too great. */
  static @Nullable BiasChoice upTo(double largestOhms, int item) {
    double most = Math.min(largestOhms, Levels.GREATEST_BIAS_OHMS);
    if (most < Levels.LEAST_BIAS_OHMS * (1 - PreferredResistor.ROUNDING)) {
      return null;
    }
    double standard = PreferredResistor.e24AtMost(most);
    if (standard < Levels.LEAST_BIAS_OHMS) {
      standard = PreferredResistor.e96AtMost(most);
    }
    return new BiasChoice(
        item,
        Math.max(most, Levels.LEAST_BIAS_OHMS),
        standard < Levels.LEAST_BIAS_OHMS ? null : standard);
  }
}
