package org.headhouse.linter.line;

import java.util.List;

/**
 * How characters go over the line.
 *
 * @param baud bits a second
 * @param parityBit whether a character has one
 * @param stopBits 1 or 2
 */
public record SerialFormat(int baud, boolean parityBit, int stopBits) {

  /** The rates that controllers are set to (MODBUS over Serial Line V1.02 §3.2 and practice). */
  public static final List<Integer> STANDARD_RATES =
      List.of(1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200);

  private static final int START_BITS = 1;
  private static final int DATA_BITS = 8;
  private static final double SILENT_CHARACTERS = 3.5;
  private static final int FASTEST_COUNTED_BAUD = 19_200;
  private static final double FIXED_SILENCE_SECONDS = 1.750e-3;

  public SerialFormat {
    Require.positive(baud, "baud rate");
    if (stopBits != 1 && stopBits != 2) {
      throw new IllegalArgumentException("stop bits must be 1 or 2: " + stopBits);
    }
  }

  /** Start, data, parity and stop: 11 in the standard (MODBUS over Serial Line V1.02 §2.5.1). */
  public int characterBits() {
    return START_BITS + DATA_BITS + (parityBit ? 1 : 0) + stopBits;
  }

  /** {@code bits / baud}. */
  public double characterSeconds() {
    return (double) characterBits() / baud;
  }

  /**
   * The silence between frames, t3.5: 3.5 characters up to 19 200 bit/s, above that 1.750 ms
   * (MODBUS over Serial Line V1.02 §2.5.1.1).
   */
  public double silenceSeconds() {
    return baud <= FASTEST_COUNTED_BAUD
        ? SILENT_CHARACTERS * characterSeconds()
        : FIXED_SILENCE_SECONDS;
  }

  /** A frame on the wire, without the silence around it; a byte is a character. */
  public double frameSeconds(int bytes) {
    return bytes * characterSeconds();
  }

  /**
   * A request and its answer, each followed by a silence: {@code T = (request + answer) · character
   * + 2 · t3.5} (from MODBUS over Serial Line V1.02 and the MODBUS Application Protocol V1.1b3).
   * The time that the unit takes to think is not in it.
   */
  public double exchangeSeconds(int requestBytes, int answerBytes) {
    return frameSeconds(requestBytes + answerBytes) + 2 * silenceSeconds();
  }

  SerialFormat withBaud(int other) {
    return new SerialFormat(other, parityBit, stopBits);
  }
}
