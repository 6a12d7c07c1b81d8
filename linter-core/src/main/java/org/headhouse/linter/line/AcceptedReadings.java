package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What a meter may show on a sound segment, over all combinations of what its parts may have. The
 * error of the meter itself comes on top ({@link MeterAccuracy}).
 */
@Internal
public final class AcceptedReadings {
  private AcceptedReadings() {}

  /**
   * What D1 − D0 may be.
   *
   * @param lowVolts the least, all receivers taking what they may
   * @param highVolts the most, receivers taking less or nothing
   */
  public record IdleRange(double lowVolts, double highVolts) {}

  /**
   * The range of the pair resistance at every item with the power off, O(n) for all. No resistance
   * seen anywhere falls when a resistor is raised (Rayleigh): the low end is that of the least
   * resistors and the coldest cable, with the loads and the bias returned through a shorted supply;
   * the high end is that of the greatest terminators and the warmest cable alone.
   *
   * @return in the order of the chain; {@link Double#POSITIVE_INFINITY} where nothing joins the
   *     conductors
   */
  public static List<PairResistance> pairResistances(SegmentSpread spread) {
    SpreadParts parts = new SpreadParts(spread);
    int size = spread.circuit().items().size();
    double[] most = new double[size];
    for (CornerPart part : List.of(parts.fullLoads(), parts.steadyTerminators(), parts.bias(1))) {
      for (int item = 0; item < size; item++) {
        most[item] += part.greatestSiemens()[item];
      }
    }
    double[] least = parts.steadyTerminators().leastSiemens();
    double[] low = new Ladder(most, new double[size], spread.leastHopOhms()).siemens();
    double[] high = new Ladder(least, new double[size], spread.greatestHopOhms()).siemens();
    List<PairResistance> ranges = new ArrayList<>(size);
    for (int item = 0; item < size; item++) {
      ranges.add(new PairResistance(2 / low[item], 2 / high[item]));
    }
    return List.copyOf(ranges);
  }

  /**
   * The range of the idle voltage at one item, O(n); see {@link CornerNetwork}.
   *
   * @param item its index in the segment
   * @return null without bias
   */
  public static @Nullable IdleRange idleVolts(SegmentSpread spread, int item) {
    return spread.circuit().isBiased()
        ? new IdleRange(
            IdleCorners.lowest(spread).leastVolts(item),
            -IdleCorners.highestTurned(spread).leastVolts(item))
        : null;
  }
}
