package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.pair;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

class WorstCornerTest {
  private static final double RELATIVE = 1e-9;
  private static final int MOST_PARTS = 10;

  /** Small segments of all sorts, in a cable of an area that may have 7 % more. */
  private static Stream<SegmentSpread> spreads(long seed, int count) {
    CableSpread cable = CableSpread.atWeakest(Wire.squareMillimetres(0.5), null, Tolerances.USUAL);
    return RandomSegments.of(seed, count, 1, 5)
        .map(circuit -> new SegmentSpread(circuit, cable, Tolerances.USUAL))
        .filter(spread -> new BruteForce(spread, true).parts() <= MOST_PARTS);
  }

  /**
   * Computed by hand without cable: 560 Ω on 28 unit loads and two terminators of 120 Ω are 0.2384
   * V as written (nodal analysis); 588 Ω, 4.75 V and 114 Ω give Vs / (R_B · (1/R_B + 28/12 kΩ + 4/
   * R_T)).
   */
  @Test
  void theCornerOfAShortLineIsComputed() {
    SegmentItem end = unit(14, ohms(120), bias(560, 5));
    SegmentCircuit circuit = withoutCable(end, unit(14, ohms(120)));
    double expected = 4.75 / (588 * (1 / 588.0 + 28 / 12_000.0 + 4 / 114.0));
    IdleVoltage lowest =
        requireNonNull(
            WorstCorner.lowestIdle(
                new SegmentSpread(circuit, new CableSpread(0, 0), Tolerances.USUAL)));
    assertThat(lowest.item()).isZero();
    assertThat(lowest.volts()).isCloseTo(expected, within(1e-12));
    assertThat(lowest.volts()).isLessThan(0.21);
    assertThat(requireNonNull(WorstCorner.lowestIdle(SegmentSpread.none(circuit))).volts())
        .isCloseTo(0.2384, within(0.00005));
  }

  /** An item of bias may say better: 1 % instead of 5 %. */
  @Test
  void aBiasMayHaveItsOwnTolerance() {
    SegmentItem end = unit(0, ohms(60), new BiasResistors(560, 5, 0.01));
    assertThat(
            WorstCorner.idleVolts(
                new SegmentSpread(
                    withoutCable(end), new CableSpread(0, 0), new Tolerances(0.05, 0, 0, 0))))
        .singleElement()
        .satisfies(
            volts ->
                assertThat(volts).isCloseTo(5 / (565.6 * (1 / 565.6 + 2 / 60.0)), within(1e-12)));
  }

  /**
   * Computed by hand: 40 Ω in each conductor at their greatest divide with the least terminator.
   */
  @Test
  void theCornerOfWhatArrivesIsComputed() {
    SegmentCircuit circuit = pair(unit(0, ohms(120)), 40, unit(0, ohms(120)));
    SegmentSpread spread =
        new SegmentSpread(circuit, new CableSpread(0.098, 0.102), Tolerances.USUAL);
    ReceivedVoltage weakest = requireNonNull(WorstCorner.weakestReceived(spread));
    assertThat(weakest.volts()).isCloseTo(1.5 * 114 / (114 + 2 * 40.8), within(1e-12));
    assertThat(List.of(weakest.from(), weakest.to())).containsExactly(0, 1);
  }

  @Test
  void withoutTolerancesItIsWhatIsWritten() {
    RandomSegments.of(31, 400, 1, 30)
        .forEach(
            circuit -> {
              SegmentSpread spread = SegmentSpread.none(circuit);
              assertThat(WorstCorner.idleVolts(spread) == null)
                  .isEqualTo(IdleVoltage.ofAllItems(circuit) == null);
              ReceivedVoltage weakest = WorstCorner.weakestReceived(spread);
              ReceivedVoltage written = ReceivedVoltage.weakestOfItems(circuit);
              assertThat(weakest == null).isEqualTo(written == null);
              if (weakest != null && written != null) {
                assertThat(weakest.volts()).isCloseTo(written.volts(), within(1e-12));
              }
              IdleVoltage idle = WorstCorner.lowestIdle(spread);
              List<Double> writtenIdle = IdleVoltage.ofAllItems(circuit);
              if (idle != null && writtenIdle != null) {
                assertThat(idle.volts())
                    .isCloseTo(IdleVoltage.lowest(writtenIdle).volts(), within(1e-12));
              }
            });
  }

  @Test
  void someAreFoundByBruteForce() {
    assertThat(checked(41, 60)).isGreaterThan(20);
  }

  @Test
  @Tag("long")
  void theWorstOfAllCornersIsFoundByBruteForce() {
    assertThat(checked(42, 900)).isGreaterThan(350);
  }

  private static long checked(long seed, int count) {
    return spreads(seed, count)
        .peek(WorstCornerTest::receivedAgrees)
        .filter(WorstCornerTest::idleAgrees)
        .count();
  }

  private static boolean idleAgrees(SegmentSpread spread) {
    List<Double> found = WorstCorner.idleVolts(spread);
    if (found == null) {
      return false;
    }
    double[] least =
        BruteForce.least(
            new BruteForce(spread, true).corners(false).map(NodalAnalysis::differences));
    for (int item = 0; item < least.length; item++) {
      assertWorst(found.get(item), least[item], spread);
    }
    assertWorst(
        requireNonNull(WorstCorner.lowestIdle(spread)).volts(),
        Arrays.stream(least).min().orElseThrow(),
        spread);
    return true;
  }

  /**
   * Never over the worst of all corners: at it with one bias at most, with weak pulls beside it
   * within 1 %. Where no terminator conducts, so that the voltages are far over the threshold, or
   * in several places is a strong bias, which is a fault of its own, it may be off further.
   */
  private static void assertWorst(double found, double least, SegmentSpread spread) {
    List<BiasResistors> biases = biases(spread);
    double rounding = RELATIVE * Math.max(Math.abs(least), 0.01);
    boolean rough = biases.stream().filter(bias -> !bias.isWeak()).count() > 1 || !isClosed(spread);
    double share = rough ? 0.1 : 0.01;
    double under = biases.size() <= 1 ? rounding : share * Math.max(Math.abs(least), 0.2);
    assertThat(found).as("%s", spread).isBetween(least - under, least + rounding);
  }

  private static boolean isClosed(SegmentSpread spread) {
    return spread.circuit().items().stream()
        .map(SegmentItem::terminator)
        .anyMatch(terminator -> terminator != null && !terminator.capacitorInSeries());
  }

  private static List<BiasResistors> biases(SegmentSpread spread) {
    return spread.circuit().items().stream()
        .map(SegmentItem::bias)
        .filter(Objects::nonNull)
        .toList();
  }

  private static void receivedAgrees(SegmentSpread spread) {
    List<ReceivedVoltage> found = WorstCorner.weakestAtEachItem(spread);
    ReceivedVoltage weakest = WorstCorner.weakestReceived(spread);
    int size = spread.circuit().items().size();
    if (size < 2) {
      assertThat(found).isEmpty();
      assertThat(weakest).isNull();
      return;
    }
    double[] least =
        BruteForce.least(
            new BruteForce(spread, true)
                .corners(true)
                .map(nodes -> weakestOfAllSenders(nodes, size)));
    for (int item = 0; item < size; item++) {
      assertThat(found.get(item).to()).isEqualTo(item);
      assertWorst(found.get(item).volts(), least[item], spread);
    }
    assertWorst(requireNonNull(weakest).volts(), Arrays.stream(least).min().orElseThrow(), spread);
  }

  private static double[] weakestOfAllSenders(NodalAnalysis nodes, int size) {
    double[] undriven = nodes.differences();
    return IntStream.range(0, size)
        .mapToDouble(
            to ->
                IntStream.range(0, size)
                    .filter(from -> from != to)
                    .mapToDouble(from -> nodes.receivedVolts(undriven, from, to))
                    .min()
                    .orElseThrow())
        .toArray();
  }

  /** The resistors of a bias of 12 V hold D1 over the supply of a weak pull to 3.3 V. */
  @Test
  void supplyThatDiffersMuchIsGranted() {
    SegmentCircuit circuit =
        pair(unit(1, ohms(120), bias(560, 12)), 20, unit(1, ohms(120), bias(4700, 3.3)));
    SegmentSpread spread = new SegmentSpread(circuit, new CableSpread(0.09, 0.1), Tolerances.USUAL);
    double[] alike =
        BruteForce.least(
            new BruteForce(spread, false).corners(false).map(NodalAnalysis::differences));
    double[] unlike =
        BruteForce.least(
            new BruteForce(spread, true).corners(false).map(NodalAnalysis::differences));
    assertThat(unlike[1]).isLessThan(alike[1] * 0.999);
    assertThat(requireNonNull(WorstCorner.idleVolts(spread)).get(1))
        .isBetween(0.99 * unlike[1], unlike[1]);
  }
}
