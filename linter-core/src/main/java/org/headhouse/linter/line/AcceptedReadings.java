package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
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
    int size = spread.circuit().items().size();
    double[] none = new double[size];
    double[] low = new Ladder(PairSpread.most(spread), none, spread.leastHopOhms()).siemens();
    double[] high = new Ladder(PairSpread.least(spread), none, spread.greatestHopOhms()).siemens();
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
    List<IdleRange> ranges = idleVolts(spread, IntStream.of(item));
    return ranges == null ? null : ranges.get(0);
  }

  /**
   * The range of the idle voltage at every item, O(n) an item.
   *
   * @return in the order of the chain; null without bias
   */
  public static @Nullable List<IdleRange> idleVolts(SegmentSpread spread) {
    return idleVolts(spread, IntStream.range(0, spread.circuit().items().size()));
  }

  private static @Nullable List<IdleRange> idleVolts(SegmentSpread spread, IntStream items) {
    if (!spread.circuit().isBiased()) {
      return null;
    }
    CornerNetwork lowest = IdleCorners.lowest(spread);
    CornerNetwork highestTurned = IdleCorners.highestTurned(spread);
    return items
        .mapToObj(item -> new IdleRange(lowest.leastVolts(item), -highestTurned.leastVolts(item)))
        .toList();
  }
}
