package org.headhouse.linter.line;

import java.util.Arrays;
import java.util.OptionalDouble;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/** Which bias resistors a segment needs. */
@Internal
public final class BiasSizing {
  private BiasSizing() {}

  /**
   * The largest bias resistors that still give every item an idle voltage at the worst corner of
   * its parts, as the only bias of the segment, exactly and in O(n).
   *
   * <p>From the bias on the voltage falls towards both ends, so the ends are the lowest. For each
   * of them the worst corner is known: terminators at their least, cable at its greatest from the
   * bias to the end and at its least elsewhere (see {@link CornerNetwork}). With {@code z[end]} the
   * voltage of that end for one ampere into the differential network at the bias, without bias
   * there, {@code z} that at the bias itself, and the supply at its least, {@code R_B · (1 +
   * tolerance) = Vs · z[end] / V − z}. For no cable resistance this is the formula of TI SLLA272.
   *
   * @param at the index of the item that they are fitted at
   * @param supplyVolts the supply against common, as written
   * @param wantedVolts the least D1 − D0 at any item
   * @return infinite where nothing loads the pair, empty where no resistor is small enough
   */
  public static OptionalDouble largestOhms(
      SegmentSpread spread, int at, double supplyVolts, double wantedVolts) {
    Require.positive(supplyVolts, "bias supply");
    Require.positive(wantedVolts, "wanted idle voltage");
    Tolerances tolerances = spread.tolerances();
    double leastSupply = supplyVolts * (1 - tolerances.supply());
    double largest = Double.POSITIVE_INFINITY;
    for (int end : new int[] {0, spread.circuit().items().size() - 1}) {
      double[] ohms = oneAmpere(spread, at, end);
      largest =
          Math.min(
              largest,
              Double.isInfinite(ohms[end])
                  ? unloaded(leastSupply, wantedVolts)
                  : leastSupply * ohms[end] / wantedVolts - ohms[at]);
    }
    return largest > 0
        ? OptionalDouble.of(largest / (1 + tolerances.resistors()))
        : OptionalDouble.empty();
  }

  /** Where nothing takes current, any resistors do, or none. */
  private static double unloaded(double supplyVolts, double wantedVolts) {
    return wantedVolts <= supplyVolts ? Double.POSITIVE_INFINITY : 0;
  }

  /** The voltages for one ampere into one item, at the corner that is the worst for another. */
  private static double[] oneAmpere(SegmentSpread spread, int at, int target) {
    SpreadParts parts = new SpreadParts(spread);
    double[] loads = parts.fullLoads().greatestSiemens();
    double[] terminators = parts.steadyTerminators().greatestSiemens();
    double[] shunts = new double[loads.length];
    double[] amperes = new double[loads.length];
    amperes[at] = 1;
    Arrays.setAll(shunts, item -> loads[item] + terminators[item]);
    double[] least = spread.leastHopOhms();
    double[] greatest = spread.greatestHopOhms();
    double[] hops = new double[least.length];
    int from = Math.min(at, target);
    int to = Math.max(at, target);
    Arrays.setAll(hops, hop -> hop >= from && hop < to ? greatest[hop] : least[hop]);
    return new Ladder(shunts, amperes, hops).volts();
  }

  /**
   * Bias resistors of the range that the Modbus specification allows, all of it looked at: at the
   * item that is asked for if any do there, else at the item where the largest do, which lies
   * towards the middle of the line. O(n) at one item, O(n²) for the search.
   *
   * @param at the index of the item that is asked for
   * @param supplyVolts the supply against common, as written
   * @param wantedVolts the least D1 − D0 at any item
   * @return null where none do anywhere
   */
  public static @Nullable BiasChoice choice(
      SegmentSpread spread, int at, double supplyVolts, double wantedVolts) {
    BiasChoice here = choiceAt(spread, at, supplyVolts, wantedVolts);
    return here == null ? bestPlace(spread, supplyVolts, wantedVolts) : here;
  }

  private static @Nullable BiasChoice choiceAt(
      SegmentSpread spread, int at, double supplyVolts, double wantedVolts) {
    return BiasChoice.upTo(largestOhms(spread, at, supplyVolts, wantedVolts).orElse(0), at);
  }

  private static @Nullable BiasChoice bestPlace(
      SegmentSpread spread, double supplyVolts, double wantedVolts) {
    int best = 0;
    double largest = 0;
    for (int item = 0; item < spread.circuit().items().size(); item++) {
      double here = largestOhms(spread, item, supplyVolts, wantedVolts).orElse(0);
      if (here > largest) {
        best = item;
        largest = here;
      }
    }
    return BiasChoice.upTo(largest, best);
  }
}
