package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;

/** How long the cable of a segment may be for its rate, stubs not counted. */
@Internal
public final class LengthLimit {

  /** 4000 feet, up to about 100 kbit/s (The RS-485 Design Guide, TI SLLA272). */
  public static final double LONGEST_METRES = 1200;

  /** At 9600 bit/s or less, with 26 AWG or wider (MODBUS over Serial Line V1.02 §3.4.3). */
  public static final double MODBUS_METRES = 1000;

  private static final double OPTIMISTIC_METRE_BITS_PER_SECOND = 1e8;
  private static final double CAREFUL_METRE_BITS_PER_SECOND = 1e7;

  private LengthLimit() {}

  /** {@code 10⁸ / baud}, the common optimistic form (common practice, no source). */
  public static double optimisticMetres(int baud) {
    return OPTIMISTIC_METRE_BITS_PER_SECOND / baud;
  }

  /** {@code 10⁷ / baud}, for a jitter of 10 % (TI SLLA272). */
  public static double carefulMetres(int baud) {
    return CAREFUL_METRE_BITS_PER_SECOND / baud;
  }
}
