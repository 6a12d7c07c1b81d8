package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.pair;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DriverLoadTest {

  /**
   * Computed from the figures of TI SLLA272 (read): 1.5 V into 54 Ω, unit loads of 24 kΩ across the
   * pair, two terminators; with and without bias.
   */
  @ParameterizedTest
  @CsvSource({
    "120, 32,      , 55.6",
    "120, 32, 470, 52.5",
    "100,  0,      , 50.0",
    "120,  0,      , 60.0",
    "150, 32, 560, 64.3",
  })
  void withoutCableItIsAllInParallel(
      double terminator, double loads, @Nullable Double biasOhms, double expected) {
    SegmentItem near =
        unit(loads / 2, ohms(terminator), biasOhms == null ? null : bias(biasOhms, 5));
    SegmentItem far = unit(loads / 2, Terminator.resistorAndCapacitor(terminator));
    assertThat(DriverLoad.ofAllItems(withoutCable(near, far)))
        .allSatisfy(load -> assertThat(load).isCloseTo(expected, within(0.05)));
  }

  /** Computed by hand: 40 Ω out, 40 Ω back and the far terminator, beside the own. */
  @Test
  void cableRelievesTheDriver() {
    SegmentCircuit circuit = pair(unit(0, ohms(120)), 40, unit(0, ohms(100)));
    assertThat(DriverLoad.ofAllItems(circuit).get(0))
        .isCloseTo(1 / (1 / 120.0 + 1 / 180.0), within(1e-9));
    assertThat(DriverLoad.heaviest(circuit).item()).isOne();
    assertThat(DriverLoad.heaviest(circuit).ohms())
        .isCloseTo(1 / (1 / 100.0 + 1 / 200.0), within(1e-9));
  }

  @Test
  void aPairThatNothingJoinsIsNoLoad() {
    assertThat(DriverLoad.heaviest(withoutCable(unit(0, null), unit(0, null))))
        .isEqualTo(new DriverLoad(0, Double.POSITIVE_INFINITY));
  }

  /** Other rules tell of the terminator in the middle and of the second bias. */
  @Test
  void whatIsAFaultOfItsOwnCanBeLeftOut() {
    SegmentItem end = unit(1, ohms(120));
    SegmentItem pulled = unit(1, null, bias(4700, 5));
    SegmentCircuit circuit =
        withoutCable(
            end, pulled, unit(1, null, bias(560, 5)), unit(1, ohms(120), bias(470, 5)), end);
    assertThat(circuit.withoutExtras())
        .isEqualTo(withoutCable(end, pulled, unit(1, null, bias(560, 5)), unit(1, null), end));
  }

  /** Computed: 1/54 − 2/120 − 32/24 kΩ leave 1/2R_B, and so on for the other two. */
  @Test
  void eachReliefBringsTheLoadToItsLimit() {
    SegmentItem near = unit(16, ohms(120), bias(470, 5));
    SegmentItem far = unit(16, ohms(120));
    SegmentCircuit circuit = withoutCable(near, far);
    double left = 1 / 54.0 - 2 / 120.0 - 32 / 24_000.0;
    assertThat(DriverRelief.leastBiasOhms(circuit)).hasValueCloseTo(1 / left / 2, within(1e-6));
    double each = (1 / 54.0 - 32 / 24_000.0 - 1 / 940.0) / 2;
    assertThat(DriverRelief.leastTerminatorOhms(circuit)).hasValueCloseTo(1 / each, within(1e-6));
    double loads = 24_000 * (1 / 54.0 - 2 / 120.0 - 1 / 940.0);
    assertThat(DriverRelief.mostUnitLoads(circuit)).hasValueCloseTo(loads, within(1e-6));
  }

  @Test
  void whatIsInOrderStays() {
    SegmentCircuit circuit = withoutCable(unit(1, ohms(120), bias(560, 5)), unit(1, ohms(120)));
    assertThat(DriverRelief.leastBiasOhms(circuit)).hasValueCloseTo(560.0, within(1e-9));
    assertThat(DriverRelief.leastTerminatorOhms(circuit)).hasValueCloseTo(120.0, within(1e-9));
    assertThat(DriverRelief.mostUnitLoads(circuit)).hasValue(2);
  }

  @Test
  void someLoadsAreBeyondARelief() {
    SegmentCircuit low = withoutCable(unit(1, ohms(60)), unit(1, ohms(60), bias(560, 5)));
    assertThat(DriverRelief.leastBiasOhms(low)).isEmpty();
    assertThat(DriverRelief.mostUnitLoads(low)).isEmpty();
    SegmentCircuit crowded = withoutCable(unit(500, ohms(120)), unit(500, ohms(120)));
    assertThat(DriverRelief.leastTerminatorOhms(crowded)).isEmpty();
    assertThat(DriverRelief.leastBiasOhms(crowded)).isEmpty();
    SegmentCircuit bare = withoutCable(unit(1, null, bias(4700, 5)), unit(1, null));
    assertThat(DriverRelief.leastTerminatorOhms(bare)).isEmpty();
    assertThat(DriverRelief.leastBiasOhms(bare)).isEmpty();
  }

  @Test
  void theReliefHoldsWithCableAsWell() {
    List<SegmentCircuit> heavy =
        RandomSegments.of(11, 400, 2, 20)
            .map(SegmentCircuit::withoutExtras)
            .filter(circuit -> DriverLoad.heaviest(circuit).ohms() < 54)
            .toList();
    assertThat(heavy).hasSizeGreaterThan(30);
    for (SegmentCircuit circuit : heavy) {
      DriverRelief.leastTerminatorOhms(circuit)
          .ifPresent(least -> assertRelieved(circuit.withItems(item -> raised(item, least))));
    }
  }

  private static SegmentItem raised(SegmentItem item, double least) {
    Terminator terminator = item.terminator();
    return terminator == null || terminator.resistorOhms() >= least
        ? item
        : item.with(new Terminator(least, terminator.capacitorInSeries()), item.bias());
  }

  private static void assertRelieved(SegmentCircuit circuit) {
    assertThat(DriverLoad.heaviest(circuit).ohms()).isBetween(54 - 1e-6, 54 + 1e-6);
  }

  /** IEC 60063, E24 (from memory). */
  @ParameterizedTest
  @CsvSource({"470, 470", "470.1, 510", "911, 1000", "1, 1", "99.5, 100", "128, 130"})
  void theLeastOnSaleIsFound(double ohms, double expected) {
    assertThat(PreferredResistor.e24AtLeast(ohms)).isCloseTo(expected, within(1e-9));
  }
}
