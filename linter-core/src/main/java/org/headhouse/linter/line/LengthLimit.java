package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;

/** How long the cable of a segment may be for its rate, stubs not counted. */
@Internal
public final class LengthLimit {

  /** 4000 feet, up to about 100 kbit/s (The RS-485 Design Guide, TI SLLA272). */
  public static final double LONGEST_METRES = 1200;

  /** At 9600 bit/s or less, with 26 AWG or wider (MODBUS over Serial Line V1.02 §3.4.3). */
  public static final double MODBUS_METRES = 1000;

  /** The highest rate for which {@link #MODBUS_METRES} is given; no higher rate allows more. */
  public static final int MODBUS_MOST_BAUD = 9600;

  /** The thinnest conductor for which {@link #MODBUS_METRES} is given. */
  public static final int MODBUS_THINNEST_AWG = 26;

  private static final double OPTIMISTIC_METRE_BITS_PER_SECOND = 1e8;
  private static final double CAREFUL_METRE_BITS_PER_SECOND = 1e7;

  private LengthLimit() {}

  /**
   * Whether a line fulfils the conditions under which the Modbus specification gives its length. A
   * rate over them allows no more, a thinner conductor less.
   */
  public static boolean isGivenByModbus(int baud, Wire wire) {
    return baud <= MODBUS_MOST_BAUD
        && wire.areaSquareMetres() >= Wire.awg(MODBUS_THINNEST_AWG).areaSquareMetres();
  }

  /** {@code 10⁸ / baud}, the common optimistic form (common practice, no source). */
  public static double optimisticMetres(int baud) {
    return OPTIMISTIC_METRE_BITS_PER_SECOND / baud;
  }

  /** {@code 10⁷ / baud}, for a jitter of 10 % (TI SLLA272). */
  public static double carefulMetres(int baud) {
    return CAREFUL_METRE_BITS_PER_SECOND / baud;
  }
}
