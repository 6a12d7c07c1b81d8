package org.headhouse.linter.line;

/**
 * A terminator with a capacitor beside what it has to follow.
 *
 * @param timeConstantSeconds {@code R · C}: so long after an edge it has let go of two thirds
 * @param bitSeconds {@code 1 / baud}
 * @param roundTripSeconds from one end of the segment to the other and back, {@code 2 · ℓ / (v ·
 *     c)}
 */
public record TerminatorTiming(
    double timeConstantSeconds, double bitSeconds, double roundTripSeconds) {

  /**
   * The three times. A time constant of many round trips ends a reflection as its resistor alone
   * does; one of a small part of a bit leaves the levels alone.
   *
   * @param ohms the resistor
   * @param farads the capacitor
   * @param baud bits a second
   * @param metres the cable of the segment
   * @param velocityFactor the speed in the cable as a share of that of light
   */
  public static TerminatorTiming of(
      double ohms, double farads, int baud, double metres, double velocityFactor) {
    Require.positive(ohms, "terminator");
    Require.positive(farads, "capacitor");
    Require.positive(baud, "baud rate");
    Require.notNegative(metres, "length");
    Require.positive(velocityFactor, "velocity factor");
    return new TerminatorTiming(
        ohms * farads,
        1.0 / baud,
        2 * metres / (velocityFactor * StubLimit.SPEED_OF_LIGHT_METRES_PER_SECOND));
  }
}
