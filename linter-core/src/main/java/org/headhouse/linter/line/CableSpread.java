package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What one conductor of a cable may have, each run of it on its own.
 *
 * @param leastOhmsPerMetre the least
 * @param greatestOhmsPerMetre the greatest
 */
@Internal
public record CableSpread(double leastOhmsPerMetre, double greatestOhmsPerMetre) {

  /** A house in winter (common practice, no source). */
  public static final double WINTER_CELSIUS = -10;

  /** A house in summer (common practice, no source). */
  public static final double SUMMER_CELSIUS = 50;

  public CableSpread {
    Require.notNegative(leastOhmsPerMetre, "least resistance of the cable");
    Require.notNegative(greatestOhmsPerMetre - leastOhmsPerMetre, "spread of the cable");
  }

  /**
   * For the weakest voltages: at one temperature, the highest that the conductors reach, and up to
   * the greatest resistance that a conductor of this kind may have.
   *
   * @param celsius as written, or null for a house in summer
   */
  public static CableSpread atWeakest(Wire wire, @Nullable Double celsius, Tolerances tolerances) {
    double hot = celsius == null ? SUMMER_CELSIUS : celsius;
    return between(wire, hot, hot, tolerances);
  }

  /**
   * For readings of a meter: from winter to the highest temperature.
   *
   * @param celsius the highest as written, or null for a house in summer
   */
  public static CableSpread ofReadings(Wire wire, @Nullable Double celsius, Tolerances tolerances) {
    double hot = celsius == null ? SUMMER_CELSIUS : celsius;
    return between(wire, Math.min(WINTER_CELSIUS, hot), hot, tolerances);
  }

  private static CableSpread between(
      Wire wire, double leastCelsius, double greatestCelsius, Tolerances tolerances) {
    return new CableSpread(
        wire.resistanceOhmsPerMetre(leastCelsius) * (1 - tolerances.cable()),
        wire.greatestOhmsPerMetre(greatestCelsius) * (1 + tolerances.cable()));
  }
}
