package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The weakest voltages over all combinations of what the parts of a segment may have. Which
 * combination is the worst is proved with {@link CornerNetwork}; it is another one for each item.
 *
 * <p>The two resistors of one bias may differ each on its own. Alike they are the worst, and where
 * they may not be, what they could do beyond that is granted ({@link UnlikeResistors}). The two
 * conductors of one run are alike.
 */
@Internal
public final class WorstCorner {
  private WorstCorner() {}

  /**
   * The lowest that D1 − D0 can be at each item while no driver is on; O(n) an item.
   *
   * @return in the order of the chain, each at the corner that is the worst for it; null without
   *     bias
   */
  public static @Nullable List<Double> idleVolts(SegmentSpread spread) {
    if (!spread.circuit().isBiased()) {
      return null;
    }
    CornerNetwork network = IdleCorners.lowest(spread);
    return IntStream.range(0, spread.circuit().items().size())
        .mapToObj(network::leastVolts)
        .toList();
  }

  /**
   * The lowest of them over all items. Away from a bias without another one the voltage falls at
   * every corner, so with one bias only the ends are looked at, O(n).
   *
   * @return of equal ones the first in the chain; null without bias
   */
  public static @Nullable IdleVoltage lowestIdle(SegmentSpread spread) {
    List<SegmentItem> items = spread.circuit().items();
    int biases = spread.circuit().biases();
    if (biases == 0) {
      return null;
    }
    CornerNetwork network = IdleCorners.lowest(spread);
    int step = biases == 1 ? Math.max(1, items.size() - 1) : 1;
    IdleVoltage lowest = new IdleVoltage(0, network.leastVolts(0));
    for (int item = step; item < items.size(); item += step) {
      double volts = network.leastVolts(item);
      lowest = volts < lowest.volts() ? new IdleVoltage(item, volts) : lowest;
    }
    return lowest;
  }

  /**
   * The weakest that each item receives from any other; O(n) an item. At each corner the weakest
   * sender is the first item or the last (see {@link ReceivedVoltage}).
   *
   * @return in the order of the chain; empty with less than two items
   */
  public static List<ReceivedVoltage> weakestAtEachItem(SegmentSpread spread) {
    int last = spread.circuit().items().size() - 1;
    List<ReceivedVoltage> weakest = new ArrayList<>();
    ReceivedCorners corners = new ReceivedCorners(spread);
    if (last == 0) {
      return List.of();
    }
    weakest.add(corners.fromLast(0));
    for (int to = 1; to < last; to++) {
      weakest.add(ReceivedVoltage.weaker(corners.fromFirst(to), corners.fromLast(to)));
    }
    weakest.add(corners.fromFirst(last));
    return List.copyOf(weakest);
  }

  /**
   * The weakest of them over all items. While the bias overrules the driver nowhere, what arrives
   * falls away from the sender at every corner, and where it overrules it somewhere nothing arrives
   * beyond: as long as something arrives at both ends they are the weakest, and only they are
   * looked at, O(n).
   *
   * @return null with less than two items
   */
  public static @Nullable ReceivedVoltage weakestReceived(SegmentSpread spread) {
    int last = spread.circuit().items().size() - 1;
    if (last == 0) {
      return null;
    }
    ReceivedCorners corners = new ReceivedCorners(spread);
    ReceivedVoltage ofEnds = ReceivedVoltage.weaker(corners.fromFirst(last), corners.fromLast(0));
    return ofEnds.volts() > 0
        ? ofEnds
        : weakestAtEachItem(spread).stream().reduce(ofEnds, ReceivedVoltage::weaker);
  }
}
