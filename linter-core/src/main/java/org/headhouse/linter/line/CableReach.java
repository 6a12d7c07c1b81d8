package org.headhouse.linter.line;

import java.util.OptionalDouble;
import org.headhouse.linter.stability.Internal;

/** How long the cable of a segment may be. */
@Internal
public final class CableReach {
  private static final int DOUBLINGS = 60;
  private static final double PRECISION = 1e-12;

  private CableReach() {}

  /**
   * By how much all hops can be lengthened together, or must be shortened, for the weakest pair of
   * items to receive a voltage. The same factor holds for the resistance of the conductors instead.
   *
   * <p>Found by bisection on {@link WorstCorner#weakestReceived}, at each corner of the parts. For
   * {@code x = D0 − D1}, Kirchhoff's law with all hops scaled by k reads {@code (L + k·Y)·x = −k·s}
   * away from the sender, with {@code s, Y ≥ 0}; its derivative {@code (L + k·Y)·x' = −s − Y·x} is
   * nowhere positive while no x is negative, and the inverse of {@code L + k·Y} has no negative
   * element. So every x falls as k grows as long as the bias overrules the driver nowhere, and the
   * factor found is the greatest.
   *
   * @param wantedVolts the least that any item receives from any other
   * @return a factor of all lengths, exact to 1e-12; infinite where no length is too great or there
   *     are less than two items; empty where even no cable at all does not do
   */
  public static OptionalDouble longestScale(SegmentSpread spread, double wantedVolts) {
    Require.positive(wantedVolts, "wanted received voltage");
    if (!reaches(spread, 0, wantedVolts)) {
      return OptionalDouble.empty();
    }
    double tooLong = 1;
    for (int doubled = 0; reaches(spread, tooLong, wantedVolts); doubled++) {
      if (doubled == DOUBLINGS) {
        return OptionalDouble.of(Double.POSITIVE_INFINITY);
      }
      tooLong *= 2;
    }
    double enough = 0;
    while (tooLong - enough > PRECISION * tooLong) {
      double middle = (enough + tooLong) / 2;
      if (reaches(spread, middle, wantedVolts)) {
        enough = middle;
      } else {
        tooLong = middle;
      }
    }
    return OptionalDouble.of(enough);
  }

  private static boolean reaches(SegmentSpread spread, double scale, double wantedVolts) {
    ReceivedVoltage weakest = WorstCorner.weakestReceived(spread.withCableTimes(scale));
    return weakest == null || weakest.volts() >= wantedVolts;
  }
}
