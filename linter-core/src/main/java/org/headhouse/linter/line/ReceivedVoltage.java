package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What one item receives from another, in the state that the bias opposes.
 *
 * @param from the index of the sending item in the segment
 * @param to the index of the receiving item
 * @param volts D0 − D1 at the receiver; negative where the bias overrules the driver there
 */
public record ReceivedVoltage(int from, int to, double volts) {

  /** Two ways that differ by less than this are equal but for rounding. */
  private static final double ROUNDING_VOLTS = 1e-12;

  /**
   * The weakest over all ordered pairs of items, exactly and in O(n): a repeater, equipment and a
   * converter receive and send like a unit.
   *
   * <p>The driver is an ideal source of 1.5 V, the least that TIA/EIA-485-A asks of one (TI
   * SLLA272), floating between the conductors, and drives D1 below D0, against the bias. A
   * terminator with a capacitor counts as its resistor.
   *
   * <p>With {@code x = D0 − D1}, an ideal source at item j holds {@code x[j] = 1.5 V}, whatever is
   * on its other side. Away from it {@link Ladder} gives {@code x[k+1] = a[k] · (x[k] − R[k] ·
   * J[k+1])} with {@code 0 < a ≤ 1} and {@code J ≥ 0}: a rising function of x[k] that never exceeds
   * the greater of x[k] and zero. So what an item j starts reaches a later item j' with at most the
   * 1.5 V that j' itself would start with, and stays the lower of the two from there on. The
   * weakest sender for every receiver is therefore the first item, and from the other side the
   * last; one walk from each finds the weakest receiver.
   *
   * @return null with less than two items; of equal pairs the one that the first item sends, to the
   *     nearest receiver
   */
  public static @Nullable ReceivedVoltage weakestOfItems(SegmentCircuit circuit) {
    int end = circuit.items().size() - 1;
    if (end < 1) {
      return null;
    }
    Ladder ladder = DifferentialNetwork.signal(circuit);
    return weaker(weakestFromFirst(ladder), weakestFromFirst(ladder.reversed()).reversed(end));
  }

  /** The same once a terminator with a capacitor has let go. */
  static @Nullable ReceivedVoltage weakestWhenSteady(SegmentCircuit circuit) {
    int end = circuit.items().size() - 1;
    if (end < 1) {
      return null;
    }
    Ladder ladder = DifferentialNetwork.steady(circuit);
    return weaker(weakestFromFirst(ladder), weakestFromFirst(ladder.reversed()).reversed(end));
  }

  /** The one that is less, by more than rounding; else the first. */
  static ReceivedVoltage weaker(ReceivedVoltage one, ReceivedVoltage other) {
    return other.volts() < one.volts() - ROUNDING_VOLTS ? other : one;
  }

  /**
   * The weakest that each item receives from any other, exactly and in O(n). By the same reasoning
   * as for {@link #weakestOfItems} the sender is the first item or the last.
   *
   * @return in the order of the chain, one for each item; empty with less than two
   */
  public static List<ReceivedVoltage> weakestAtEachItem(SegmentCircuit circuit) {
    int end = circuit.items().size() - 1;
    if (end < 1) {
      return List.of();
    }
    Ladder ladder = DifferentialNetwork.signal(circuit);
    double[] onward = voltsFromFirst(ladder);
    double[] back = voltsFromFirst(ladder.reversed());
    List<ReceivedVoltage> weakest = new ArrayList<>(end + 1);
    for (int to = 0; to <= end; to++) {
      double fromFirst = to == 0 ? Double.POSITIVE_INFINITY : onward[to];
      double fromLast = to == end ? Double.POSITIVE_INFINITY : back[end - to];
      weakest.add(
          fromLast < fromFirst - ROUNDING_VOLTS
              ? new ReceivedVoltage(end, to, fromLast)
              : new ReceivedVoltage(0, to, fromFirst));
    }
    return List.copyOf(weakest);
  }

  /** What arrives at each node after the first, which sends. */
  private static double[] voltsFromFirst(Ladder ladder) {
    double[] volts = new double[ladder.size()];
    double difference = -Levels.DRIVER_VOLTS;
    for (int node = 1; node < volts.length; node++) {
      difference = ladder.nextVolts(node - 1, difference);
      volts[node] = -difference;
    }
    return volts;
  }

  /** What the item at the first node sends to those at the nodes after it. */
  private static ReceivedVoltage weakestFromFirst(Ladder ladder) {
    double[] volts = voltsFromFirst(ladder);
    int weakest = 1;
    for (int node = 2; node < volts.length; node++) {
      weakest = volts[node] < volts[weakest] ? node : weakest;
    }
    return new ReceivedVoltage(0, weakest, volts[weakest]);
  }

  /** The same in a segment that is seen from its other end. */
  private ReceivedVoltage reversed(int end) {
    return new ReceivedVoltage(end - from, end - to, volts);
  }
}
