package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.headhouse.linter.RandomCases;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

/** The ladder against the full matrix of both conductors, solved by EJML. */
class NetworkAgainstNodalAnalysisTest {
  private static final double RELATIVE = 1e-9;

  /**
   * Levels are small differences of a supply, so its voltage is what their error is relative to.
   */
  private static final double SUPPLY_VOLTS = 5;

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

  /** Repeaters, equipment and converters receive and send as well. */
  @Test
  void theWeakestOfAllPairsOfItemsAgrees() {
    assertThat(
            share(
                circuit ->
                    weakestAgrees(
                        circuit, items(circuit), ReceivedVoltage.weakestOfItems(circuit))))
        .as("segments with two items")
        .isGreaterThan(0.9);
  }

  @Test
  void theWeakestAtEachItemAgrees() {
    assertThat(
            share(
                circuit ->
                    weakestAtEachAgrees(
                        circuit, items(circuit), ReceivedVoltage.weakestAtEachItem(circuit))))
        .as("segments with two items")
        .isGreaterThan(0.9);
  }

  private static boolean weakestAtEachAgrees(
      SegmentCircuit circuit, List<Integer> parties, List<ReceivedVoltage> weakest) {
    NodalAnalysis nodes = NodalAnalysis.loaded(circuit, true);
    double[] undriven = nodes.differences();
    if (parties.size() < 2) {
      assertThat(weakest).isEmpty();
      return false;
    }
    assertThat(weakest.stream().map(ReceivedVoltage::to)).isEqualTo(parties);
    for (ReceivedVoltage one : weakest) {
      double least =
          parties.stream()
              .filter(from -> from != one.to())
              .mapToDouble(from -> nodes.receivedVolts(undriven, from, one.to()))
              .min()
              .orElseThrow();
      assertThat(one.volts()).as("%s of %s", one, circuit).isCloseTo(least, relative(1.5));
      assertThat(nodes.receivedVolts(undriven, one.from(), one.to()))
          .isCloseTo(least, relative(1.5));
    }
    return true;
  }

  private static boolean weakestAgrees(
      SegmentCircuit circuit, List<Integer> parties, @Nullable ReceivedVoltage weakest) {
    NodalAnalysis nodes = NodalAnalysis.loaded(circuit, true);
    double[] undriven = nodes.differences();
    double least = Double.POSITIVE_INFINITY;
    for (int from : parties) {
      for (int to : parties) {
        least = from == to ? least : Math.min(least, nodes.receivedVolts(undriven, from, to));
      }
    }
    if (weakest == null) {
      assertThat(least).as("%s", circuit).isInfinite();
      return false;
    }
    // The bias may cancel the driver, so the driver's 1.5 V is what the error is relative to.
    assertThat(weakest.volts()).as("%s", circuit).isCloseTo(least, relative(1.5));
    assertThat(nodes.receivedVolts(undriven, weakest.from(), weakest.to()))
        .as("pair of %s", circuit)
        .isCloseTo(least, relative(1.5));
    assertThat(parties).contains(weakest.from(), weakest.to());
    return true;
  }

  private static List<Integer> items(SegmentCircuit circuit) {
    return IntStream.range(0, circuit.items().size()).boxed().toList();
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

  @Test
  void driverLoadsAgreeAtEveryItem() {
    assertThat(share(NetworkAgainstNodalAnalysisTest::driverLoadsAgree)).isEqualTo(1);
  }

  private static boolean driverLoadsAgree(SegmentCircuit circuit) {
    NodalAnalysis nodes = NodalAnalysis.loaded(circuit, true);
    List<Double> loads = DriverLoad.ofAllItems(circuit);
    double least = Double.POSITIVE_INFINITY;
    for (int item = 0; item < loads.size(); item++) {
      double expected = nodes.transferOhms(item, item);
      assertThat(loads.get(item)).as("%s", circuit).isCloseTo(expected, relative(expected));
      least = Math.min(least, expected);
    }
    assertThat(DriverLoad.heaviest(circuit).ohms()).isCloseTo(least, relative(least));
    return true;
  }

  @Test
  void levelsAgainstCommonAgree() {
    assertThat(share(NetworkAgainstNodalAnalysisTest::levelsAgree))
        .as("segments with bias")
        .isGreaterThan(0.5);
  }

  private static boolean levelsAgree(SegmentCircuit circuit) {
    List<IdleLevels> levels = IdleLevels.ofAllItems(circuit);
    if (levels == null) {
      return false;
    }
    double[][] expected = NodalAnalysis.loaded(circuit, false).levels();
    for (int item = 0; item < expected.length; item++) {
      assertThat(levels.get(item).d1Volts())
          .as("%s", circuit)
          .isCloseTo(expected[item][0], relative(SUPPLY_VOLTS));
      assertThat(levels.get(item).d0Volts())
          .as("%s", circuit)
          .isCloseTo(expected[item][1], relative(SUPPLY_VOLTS));
    }
    return true;
  }

  private static Offset<Double> relative(double to) {
    return within(RELATIVE * Math.abs(to));
  }
}
