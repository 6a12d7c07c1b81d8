package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.RandomCases;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BiasSizingTest {

  /**
   * The RS-485 Design Guide, TI SLLA272 (read): 528 Ω, ±0.5 Ω, for 4.75 V, 0.25 V, 120 Ω and 32
   * unit loads, the far terminator raised so that with the bias resistors across it it makes 120 Ω.
   */
  @Test
  void theResistorsOfTheDesignGuideAreFound() {
    double raisedOhms = 1 / (1 / 120.0 - 1 / (2 * 528.0));
    SegmentCircuit circuit = withoutCable(unit(16, ohms(120)), unit(16, ohms(raisedOhms)));
    assertThat(BiasSizing.largestOhms(SegmentSpread.none(circuit), 1, 4.75, 0.25))
        .hasValueCloseTo(528.0, within(0.5));
  }

  /** Computed from the table of idle voltages: the inverse of two rows. */
  @ParameterizedTest
  @CsvSource({"0, 0.3125, 450", "32, 0.23629, 560"})
  void whatTheTableGivesIsFoundBack(double loads, double volts, double expectedOhms) {
    SegmentItem end = unit(loads / 2, ohms(120));
    assertThat(BiasSizing.largestOhms(SegmentSpread.none(withoutCable(end, end)), 0, 5, volts))
        .hasValueCloseTo(expectedOhms, within(0.02));
  }

  @Test
  void theLowestItemThenHasExactlyTheWantedVoltage() {
    double found =
        RandomCases.share(
            500,
            random -> {
              SegmentCircuit circuit = RandomSegments.one(random, 1, 60);
              int at = circuit.items().size() / 3;
              double largest =
                  BiasSizing.largestOhms(SegmentSpread.none(circuit), at, 5, 0.25).orElse(0);
              IdleVoltage lowest = lowestIdle(circuit, at, largest);
              if (lowest == null) {
                return false;
              }
              assertThat(lowest.volts()).isCloseTo(0.25, within(1e-9));
              return true;
            });
    assertThat(found).isGreaterThan(0.5);
  }

  private static @Nullable IdleVoltage lowestIdle(
      SegmentCircuit circuit, int biasAt, double eachOhms) {
    List<SegmentItem> items = new ArrayList<>();
    for (SegmentItem item : circuit.items()) {
      BiasResistors bias = items.size() == biasAt && eachOhms > 0 ? bias(eachOhms, 5) : null;
      items.add(new SegmentItem(item.name(), item.unitLoads(), item.terminator(), bias));
    }
    SegmentCircuit biased =
        new SegmentCircuit(items, circuit.hopLengthsMetres(), circuit.ohmsPerMetre());
    return SegmentFigures.of(biased, 0).lowestIdle();
  }

  @Test
  void someWishesCannotBeMet() {
    SegmentItem end = unit(0, ohms(120));
    SegmentCircuit circuit = withoutCable(end, end);
    assertThat(BiasSizing.largestOhms(SegmentSpread.none(circuit), 0, 5, 4.99)).isNotEmpty();
    assertThat(BiasSizing.largestOhms(SegmentSpread.none(circuit), 0, 5, 5)).isEmpty();
  }

  @Test
  void withoutAnyLoadEveryResistorDoes() {
    SegmentCircuit circuit = withoutCable(unit(0, null), unit(0, null));
    assertThat(BiasSizing.largestOhms(SegmentSpread.none(circuit), 0, 5, 5))
        .hasValue(Double.POSITIVE_INFINITY);
    assertThat(BiasSizing.largestOhms(SegmentSpread.none(circuit), 0, 5, 5.1)).isEmpty();
  }

  /** IEC 60063, series E24 (from memory): … 47 51 56 62 68 … 91 100. */
  @ParameterizedTest
  @CsvSource({
    "527.8, 510",
    "560, 560",
    "559.9, 510",
    "561, 560",
    "999, 910",
    "1000, 1000",
    "1, 1",
    "9.99, 9.1",
    "649.7, 620",
    "1_234_567, 1_200_000",
    "4699.99999999999, 4700",
  })
  void theNextLowerValueOnSaleIsFound(String ohms, String expected) {
    assertThat(PreferredResistor.e24AtMost(number(ohms)))
        .isCloseTo(number(expected), within(1e-9 * number(expected)));
  }

  private static double number(String text) {
    return Double.parseDouble(text.replace("_", ""));
  }
}
