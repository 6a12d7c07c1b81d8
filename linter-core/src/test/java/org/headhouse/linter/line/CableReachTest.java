package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.pair;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import java.util.OptionalDouble;
import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CableReachTest {

  /** Computed: 1.5 · 120/(120 + 2R) = V, solved for R; the cable has 40 Ω in each conductor. */
  @ParameterizedTest
  @CsvSource({"0.2", "0.3", "0.9", "1.4"})
  void aDividerReachesTheLengthOfItsFormula(double volts) {
    SegmentCircuit circuit = pair(unit(0, null), 40, unit(0, ohms(120)));
    assertThat(CableReach.longestScale(SegmentSpread.none(circuit), volts))
        .hasValueCloseTo(60 * (1.5 / volts - 1) / 40, within(1e-9));
  }

  /** Computed by hand from (d + 1.5)/2R + d/R_T + (d − Vs)/2R_B = 0 with d = −V. */
  @Test
  void theBiasShortensTheReach() {
    SegmentItem biased = unit(0, ohms(120), bias(560, 5));
    double conductorOhms = (1.5 - 0.3) / 2 / (0.3 / 120 + 5.3 / 1120);
    assertThat(CableReach.longestScale(SegmentSpread.none(pair(unit(0, null), 1, biased)), 0.3))
        .hasValueCloseTo(conductorOhms, within(1e-9));
  }

  @Test
  void atTheReachTheVoltageIsTheWantedOneAndBeyondItIsLess() {
    RandomCases.each(
        200,
        random -> {
          SegmentCircuit circuit = RandomSegments.one(random, 2, 40);
          OptionalDouble scale = CableReach.longestScale(SegmentSpread.none(circuit), 0.4);
          assertThat(scale).isNotEmpty();
          double factor = scale.getAsDouble();
          if (factor < 1e6) {
            assertThat(weakestVolts(circuit, factor)).isCloseTo(0.4, within(1e-9));
            assertThat(weakestVolts(circuit, factor * 1.01)).isLessThan(0.4);
            assertThat(weakestVolts(circuit, factor * 0.99)).isGreaterThan(0.4);
          } else {
            assertThat(ReceivedVoltage.weakestOfItems(circuit))
                .satisfiesAnyOf(
                    weakest -> assertThat(weakest).isNull(),
                    weakest ->
                        assertThat(weakest).extracting(ReceivedVoltage::volts).isEqualTo(1.5));
          }
        });
  }

  private static double weakestVolts(SegmentCircuit circuit, double scale) {
    ReceivedVoltage weakest =
        ReceivedVoltage.weakestOfItems(
            new SegmentCircuit(
                circuit.items(),
                circuit.hopLengthsMetres().stream().map(length -> length * scale).toList(),
                circuit.ohmsPerMetre()));
    return weakest == null ? Double.NaN : weakest.volts();
  }

  @Test
  void limitsOfTheReach() {
    SegmentItem end = unit(1, ohms(120));
    assertThat(CableReach.longestScale(SegmentSpread.none(pair(end, 40, end)), 1.6))
        .as("over the driver")
        .isEmpty();
    assertThat(CableReach.longestScale(SegmentSpread.none(pair(end, 40, end)), 1.5))
        .as("no cable")
        .hasValueCloseTo(0.0, within(1e-12));
    assertThat(CableReach.longestScale(SegmentSpread.none(withoutCable(end, end)), 1.4))
        .as("no cable to lengthen")
        .hasValue(Double.POSITIVE_INFINITY);
    assertThat(CableReach.longestScale(SegmentSpread.none(withoutCable(end)), 0.2))
        .as("one unit")
        .hasValue(Double.POSITIVE_INFINITY);
  }
}
