package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.pair;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PairResistanceTest {

  /** Computed, as a meter shows them on a short line: resistors in parallel. */
  @ParameterizedTest
  @CsvSource({"120, 60", "150, 75"})
  void twoTerminatorsAreHalfOfOne(double eachOhms, double expected) {
    SegmentItem end = unit(0, ohms(eachOhms));
    assertResistance(withoutCable(end, unit(0, null), end), 2, expected, expected);
  }

  @Test
  void oneTerminatorIsItself() {
    assertResistance(withoutCable(unit(0, ohms(120)), unit(0, null)), 0, 120, 120);
  }

  /** Computed: 60 Ω beside twice 560 Ω is 56.95 Ω. */
  @Test
  void biasResistorsCountWhereTheirSupplyIsShorted() {
    SegmentItem head = unit(0, ohms(120), bias(560, 5));
    SegmentCircuit circuit = withoutCable(head, unit(0, ohms(120)));
    assertThat(PairResistance.at(circuit, 0).lowOhms()).isCloseTo(56.95, within(0.005));
    assertResistance(circuit, 0, 60 * 1120 / 1180.0, 60);
  }

  /** Computed: 32 loads of 12 kΩ to common are 24 kΩ/32 = 750 Ω across the pair. */
  @Test
  void loadsCountForTheLowEnd() {
    SegmentItem end = unit(16, ohms(120));
    assertResistance(withoutCable(end, end), 0, 60 * 750 / 810.0, 60);
  }

  /** Computed: seen from the near end the cable, out and back, is in series with the terminator. */
  @Test
  void theCableIsInTheWay() {
    SegmentCircuit circuit = pair(unit(0, null), 40, unit(0, ohms(120)));
    assertResistance(circuit, 0, 200, 200);
    assertResistance(circuit, 1, 120, 120);
  }

  @Test
  void withoutATerminatorForDirectCurrentTheHighEndIsInfinite() {
    SegmentItem end = unit(12, Terminator.resistorAndCapacitor(120));
    assertResistance(withoutCable(end, end), 1, 1000, Double.POSITIVE_INFINITY);
    SegmentItem nothing = unit(0, null);
    assertResistance(
        pair(nothing, 40, nothing), 0, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
  }

  private static void assertResistance(
      SegmentCircuit circuit, int item, double lowOhms, double highOhms) {
    PairResistance resistance = PairResistance.at(circuit, item);
    assertOhms(resistance.lowOhms(), lowOhms);
    assertOhms(resistance.highOhms(), highOhms);
  }

  private static void assertOhms(double actual, double expected) {
    if (Double.isInfinite(expected)) {
      assertThat(actual).isEqualTo(expected);
    } else {
      assertThat(actual).isCloseTo(expected, within(1e-9));
    }
  }
}
