package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Where the conductors of an idle line are against common, at one item.
 *
 * @param d1Volts D1, which the bias pulls up
 * @param d0Volts D0, which the bias pulls down
 */
public record IdleLevels(double d1Volts, double d0Volts) {

  /**
   * The levels at every item, from the nodal analysis of the whole segment, O(n): half the sum of
   * the {@link CommonModeNetwork} and, up and down from it, half the difference of the {@link
   * DifferentialNetwork}. Common is taken as 0 V at every item. With one bias and no unit loads the
   * middle of both is half the supply wherever it is looked at (computed).
   *
   * @return in the order of the chain; null without bias, where the state of an idle line is open
   */
  public static @Nullable List<IdleLevels> ofAllItems(SegmentCircuit circuit) {
    if (!circuit.isBiased()) {
      return null;
    }
    double[] sums = CommonModeNetwork.steady(circuit).volts();
    double[] differences = DifferentialNetwork.steady(circuit).volts();
    List<IdleLevels> levels = new ArrayList<>(sums.length);
    IntStream.range(0, sums.length)
        .forEach(
            item ->
                levels.add(
                    new IdleLevels(
                        (sums[item] + differences[item]) / 2,
                        (sums[item] - differences[item]) / 2)));
    return List.copyOf(levels);
  }

  /**
   * Whether both are within the −7 to +12 V that every receiver bears (TI SLLA272, Analog Devices
   * AN-960).
   */
  public boolean isBorne() {
    return isBorne(d1Volts) && isBorne(d0Volts);
  }

  private static boolean isBorne(double volts) {
    return volts >= Levels.LEAST_LINE_VOLTS && volts <= Levels.GREATEST_LINE_VOLTS;
  }
}
