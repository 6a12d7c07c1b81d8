package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Test;

/** The ladder against the full matrix of both conductors, solved by EJML. */
class NetworkAgainstNodalAnalysisTest {
  private static final double RELATIVE = 1e-9;

  /**
   * Half of the segments have at most 12 items, and one in forty comes near the end of the
   * addresses.
   *
   * @return the share of those of which the test says something
   */
  private static double share(Predicate<SegmentCircuit> test) {
    return RandomCases.share(
        2000,
        random -> {
          int size = random.nextInt(40);
          int most = size == 0 ? 255 : size < 20 ? 40 : 12;
          return test.test(RandomSegments.one(random, size == 0 ? 41 : 1, most));
        });
  }

  @Test
  void idleVoltagesAgree() {
    assertThat(share(NetworkAgainstNodalAnalysisTest::idleVoltagesAgree))
        .as("segments with bias")
        .isGreaterThan(0.5);
  }

  private static boolean idleVoltagesAgree(SegmentCircuit circuit) {
    List<Double> idleVolts = IdleVoltage.ofAllItems(circuit);
    if (idleVolts == null) {
      return false;
    }
    double[] expected = NodalAnalysis.loaded(circuit, false).differences();
    for (int item = 0; item < expected.length; item++) {
      assertThat(idleVolts.get(item))
          .as("item %s of %s", item, circuit)
          .isCloseTo(expected[item], relative(expected[item]));
    }
    return true;
  }

  @Test
  void theWeakestOfAllPairsOfUnitsAgrees() {
    assertThat(share(NetworkAgainstNodalAnalysisTest::weakestAgrees))
        .as("segments with two units")
        .isGreaterThan(0.75);
  }

  @Test
  void theWeakestAtEachUnitAgrees() {
    assertThat(share(NetworkAgainstNodalAnalysisTest::weakestAtEachUnitAgrees))
        .as("segments with two units")
        .isGreaterThan(0.75);
  }

  private static boolean weakestAtEachUnitAgrees(SegmentCircuit circuit) {
    NodalAnalysis nodes = NodalAnalysis.loaded(circuit, true);
    double[] undriven = nodes.differences();
    List<Integer> units =
        IntStream.range(0, undriven.length).filter(item -> isUnit(circuit, item)).boxed().toList();
    List<ReceivedVoltage> weakest = ReceivedVoltage.weakestAtEachUnit(circuit);
    if (units.size() < 2) {
      assertThat(weakest).isEmpty();
      return false;
    }
    assertThat(weakest.stream().map(ReceivedVoltage::to)).isEqualTo(units);
    for (ReceivedVoltage one : weakest) {
      double least =
          units.stream()
              .filter(from -> from != one.to())
              .mapToDouble(from -> nodes.receivedVolts(undriven, from, one.to()))
              .min()
              .orElseThrow();
      assertThat(one.volts()).as("%s of %s", one, circuit).isCloseTo(least, relative(least));
      assertThat(nodes.receivedVolts(undriven, one.from(), one.to()))
          .isCloseTo(least, relative(least));
    }
    return true;
  }

  private static boolean weakestAgrees(SegmentCircuit circuit) {
    NodalAnalysis nodes = NodalAnalysis.loaded(circuit, true);
    double[] undriven = nodes.differences();
    int size = undriven.length;
    double least = Double.POSITIVE_INFINITY;
    for (int from = 0; from < size; from++) {
      for (int to = 0; to < size; to++) {
        boolean counts = from != to && isUnit(circuit, from) && isUnit(circuit, to);
        least = counts ? Math.min(least, nodes.receivedVolts(undriven, from, to)) : least;
      }
    }
    ReceivedVoltage weakest = ReceivedVoltage.weakest(circuit);
    if (weakest == null) {
      assertThat(least).as("%s", circuit).isInfinite();
      return false;
    }
    // The bias may cancel the driver, so the driver's 1.5 V is what the error is relative to.
    assertThat(weakest.volts()).as("%s", circuit).isCloseTo(least, relative(1.5));
    assertThat(nodes.receivedVolts(undriven, weakest.from(), weakest.to()))
        .as("pair of %s", circuit)
        .isCloseTo(least, relative(1.5));
    assertThat(isUnit(circuit, weakest.from()) && isUnit(circuit, weakest.to())).isTrue();
    return true;
  }

  private static boolean isUnit(SegmentCircuit circuit, int item) {
    return circuit.items().get(item).kind() == SegmentItem.Kind.UNIT;
  }

  @Test
  void pairResistancesAgreeAtEveryItem() {
    assertThat(share(NetworkAgainstNodalAnalysisTest::pairResistancesAgree))
        .as("segments with a terminator that passes direct current")
        .isGreaterThan(0.75);
  }

  private static boolean pairResistancesAgree(SegmentCircuit circuit) {
    NodalAnalysis loaded = NodalAnalysis.loaded(circuit, false);
    boolean closed =
        circuit.items().stream()
            .map(SegmentItem::terminator)
            .anyMatch(terminator -> terminator != null && !terminator.capacitorInSeries());
    NodalAnalysis terminated = closed ? NodalAnalysis.terminatorsOnly(circuit) : null;
    int size = circuit.items().size();
    for (int item = 0; item < size; item += 1 + size / 10) {
      PairResistance resistance = PairResistance.at(circuit, item);
      double low = loaded.transferOhms(item, item);
      double high =
          terminated == null ? Double.POSITIVE_INFINITY : terminated.transferOhms(item, item);
      assertThat(resistance.lowOhms()).as("%s", circuit).isCloseTo(low, relative(low));
      if (terminated == null) {
        assertThat(resistance.highOhms()).as("%s", circuit).isEqualTo(high);
      } else {
        assertThat(resistance.highOhms()).as("%s", circuit).isCloseTo(high, relative(high));
      }
    }
    return closed;
  }

  private static Offset<Double> relative(double to) {
    return within(RELATIVE * Math.abs(to));
  }
}
