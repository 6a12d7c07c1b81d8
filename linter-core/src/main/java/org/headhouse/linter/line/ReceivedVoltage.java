package org.headhouse.linter.line;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.function.Predicate;
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
   * The weakest over all ordered pairs of units, exactly and in O(n).
   *
   * <p>The driver is an ideal source of 1.5 V, the least that TIA/EIA-485-A asks of one (TI
   * SLLA272), floating between the conductors, and drives D1 below D0, against the bias. A
   * terminator with a capacitor counts as its resistor.
   *
   * <p>With {@code x = D0 − D1}, an ideal source at item j holds {@code x[j] = 1.5 V}, whatever is
   * on its other side. Away from it {@link Ladder} gives {@code x[k+1] = a[k] · (x[k] − R[k] ·
   * J[k+1])} with {@code 0 < a ≤ 1} and {@code J ≥ 0}: a rising function of x[k] that never exceeds
   * the greater of x[k] and zero. So what a unit j starts reaches a later unit j' with at most the
   * 1.5 V that j' itself would start with, and stays the lower of the two from there on. The
   * weakest sender for every receiver is therefore the first unit, and from the other side the
   * last; one walk from each finds the weakest receiver.
   *
   * @return null with less than two units; of equal pairs the one that the first unit sends, to the
   *     nearest receiver
   */
  public static @Nullable ReceivedVoltage weakest(SegmentCircuit circuit) {
    return weakest(circuit, SegmentItem::isUnit);
  }

  /**
   * The weakest over all ordered pairs of items, as {@link #weakest} for units: a repeater,
   * equipment and a converter receive and send as well.
   *
   * @return null with less than two items
   */
  public static @Nullable ReceivedVoltage weakestOfItems(SegmentCircuit circuit) {
    return weakest(circuit, item -> true);
  }

  private static @Nullable ReceivedVoltage weakest(
      SegmentCircuit circuit, Predicate<SegmentItem> counts) {
    int[] parties = parties(circuit, counts);
    if (parties.length < 2) {
      return null;
    }
    int first = parties[0];
    int last = parties[parties.length - 1];
    int end = circuit.items().size() - 1;
    Ladder ladder = DifferentialNetwork.signal(circuit);
    IntPredicate onwardCounts = node -> counts.test(circuit.items().get(node));
    IntPredicate backCounts = node -> counts.test(circuit.items().get(end - node));
    ReceivedVoltage onward = weakestAlong(ladder, first, last, onwardCounts);
    ReceivedVoltage back =
        weakestAlong(ladder.reversed(), end - last, end - first, backCounts).reversed(end);
    return weaker(onward, back);
  }

  /** The one that is less, by more than rounding; else the first. */
  static ReceivedVoltage weaker(ReceivedVoltage one, ReceivedVoltage other) {
    return other.volts() < one.volts() - ROUNDING_VOLTS ? other : one;
  }

  /**
   * The weakest that each unit receives from any other, exactly and in O(n). By the same reasoning
   * as for {@link #weakest} the sender is the first unit or the last.
   *
   * @return in the order of the chain, one for each unit; empty with less than two units
   */
  public static List<ReceivedVoltage> weakestAtEachUnit(SegmentCircuit circuit) {
    return weakestAtEach(circuit, SegmentItem::isUnit);
  }

  /**
   * The weakest that each item receives from any other, repeaters, equipment and converters
   * included.
   *
   * @return in the order of the chain, one for each item; empty with less than two
   */
  public static List<ReceivedVoltage> weakestAtEachItem(SegmentCircuit circuit) {
    return weakestAtEach(circuit, item -> true);
  }

  private static List<ReceivedVoltage> weakestAtEach(
      SegmentCircuit circuit, Predicate<SegmentItem> counts) {
    int[] parties = parties(circuit, counts);
    if (parties.length < 2) {
      return List.of();
    }
    int first = parties[0];
    int last = parties[parties.length - 1];
    int end = circuit.items().size() - 1;
    Ladder ladder = DifferentialNetwork.signal(circuit);
    double[] onward = voltsFrom(ladder, first);
    double[] back = voltsFrom(ladder.reversed(), end - last);
    return Arrays.stream(parties)
        .mapToObj(
            to -> {
              double fromFirst = to == first ? Double.POSITIVE_INFINITY : onward[to];
              double fromLast = to == last ? Double.POSITIVE_INFINITY : back[end - to];
              return fromLast < fromFirst - ROUNDING_VOLTS
                  ? new ReceivedVoltage(last, to, fromLast)
                  : new ReceivedVoltage(first, to, fromFirst);
            })
        .toList();
  }

  private static int[] parties(SegmentCircuit circuit, Predicate<SegmentItem> counts) {
    int[] parties = new int[circuit.items().size()];
    int number = 0;
    for (int item = 0; item < parties.length; item++) {
      if (counts.test(circuit.items().get(item))) {
        parties[number++] = item;
      }
    }
    return Arrays.copyOf(parties, number);
  }

  /** What arrives at the nodes from a sender on. */
  private static double[] voltsFrom(Ladder ladder, int sender) {
    double[] volts = new double[ladder.size()];
    double difference = -Levels.DRIVER_VOLTS;
    for (int node = sender + 1; node < volts.length; node++) {
      difference = ladder.nextVolts(node - 1, difference);
      volts[node] = -difference;
    }
    return volts;
  }

  /** What the item at one node sends to those at the nodes after it, up to another. */
  private static ReceivedVoltage weakestAlong(
      Ladder ladder, int sender, int lastNode, IntPredicate counts) {
    int weakestNode = lastNode;
    double weakestVolts = Double.POSITIVE_INFINITY;
    double difference = -Levels.DRIVER_VOLTS;
    for (int node = sender + 1; node <= lastNode; node++) {
      difference = ladder.nextVolts(node - 1, difference);
      if (-difference < weakestVolts && counts.test(node)) {
        weakestNode = node;
        weakestVolts = -difference;
      }
    }
    return new ReceivedVoltage(sender, weakestNode, weakestVolts);
  }

  /** The same in a segment that is seen from its other end. */
  private ReceivedVoltage reversed(int end) {
    return new ReceivedVoltage(end - from, end - to, volts);
  }
}
