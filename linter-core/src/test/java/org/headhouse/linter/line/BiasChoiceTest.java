package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** MODBUS over Serial Line V1.02 §3.4.6 (read) allows 450 to 650 Ω, on sale or not. */
class BiasChoiceTest {
  private static final double VOLTS = 0.25;
  private static final SegmentItem END = unit(0, ohms(120));

  /**
   * Between two terminators of 120 Ω without loads, R_B = 30 Ω · (Vs / V − 1), computed. E24 has
   * 470, 510, 560 and 620 Ω, E96 has 453 and 464 besides (IEC 60063, from memory).
   */
  @ParameterizedTest
  @CsvSource({
    "900, 650, 620",
    "619, 619, 560",
    "470, 470, 470",
    "469, 469, 464",
    "455, 455, 453",
    "451, 451, ",
    "450, 450, ",
  })
  void theWholeRangeIsSearched(double largest, double most, @Nullable Double standard) {
    BiasChoice choice = requireNonNull(shortLine(largest));
    assertThat(choice.item()).isZero();
    assertThat(choice.mostOhms()).isCloseTo(most, within(1e-6));
    if (standard == null) {
      assertThat(choice.standardOhms()).isNull();
    } else {
      assertThat(choice.standardOhms()).isCloseTo(standard, within(1e-9));
    }
  }

  @ParameterizedTest
  @CsvSource({"449.9", "100", "0.5"})
  void underTheRangeNoneIsOffered(double largest) {
    assertThat(shortLine(largest)).isNull();
  }

  private static @Nullable BiasChoice shortLine(double largestOhms) {
    double supplyVolts = VOLTS * (largestOhms / 30 + 1);
    return BiasSizing.choice(SegmentSpread.none(withoutCable(END, END)), 0, supplyVolts, VOLTS);
  }

  /** Parts within 5 % ask for smaller resistors than parts that are just as written. */
  @Test
  void tolerancesAreGranted() {
    SegmentItem end = unit(16, ohms(120));
    SegmentSpread exact = SegmentSpread.none(withoutCable(end, end));
    SegmentSpread spread =
        new SegmentSpread(exact.circuit(), new CableSpread(0, 0), Tolerances.USUAL);
    double largest = BiasSizing.largestOhms(spread, 0, 5, 0.2).orElseThrow();
    assertThat(largest).isLessThan(BiasSizing.largestOhms(exact, 0, 5, 0.2).orElseThrow());
    assertThat(lowest(spread, 0, largest)).isCloseTo(0.2, within(1e-12));
  }

  @Test
  void aPairWithoutLoadTakesAny() {
    SegmentItem bare = unit(0, null);
    SegmentSpread spread = SegmentSpread.none(withoutCable(bare, bare));
    assertThat(requireNonNull(BiasSizing.choice(spread, 0, 5, 0.2)).mostOhms()).isEqualTo(650);
    assertThat(BiasSizing.choice(spread, 0, 5, 5.1)).isNull();
  }

  /** From an end the far end is too low; from the middle both ends are near enough. */
  @Test
  void theMiddleIsOfferedWhereTheEndsDoNotDo() {
    SegmentItem middle = unit(1, null);
    SegmentCircuit circuit =
        new SegmentCircuit(
            List.of(END, middle, middle, middle, END), List.of(150.0, 150.0, 150.0, 150.0), 0.0942);
    SegmentSpread spread = SegmentSpread.none(circuit);
    double wanted = lowest(spread, 2, 600);
    assertThat(lowest(spread, 0, 450)).isLessThan(wanted);
    BiasChoice choice = requireNonNull(BiasSizing.choice(spread, 0, 5, wanted));
    assertThat(choice.item()).isEqualTo(2);
    assertThat(choice.mostOhms()).isCloseTo(600, within(1e-6));
    assertThat(choice.standardOhms()).isEqualTo(560);
  }

  /** What is sized gives just what was wanted, by the worst corner of the very segment. */
  @Test
  void whatIsSizedIsJustEnough() {
    RandomSegments.of(61, 300, 1, 20)
        .map(circuit -> circuit.withItems(item -> item.with(item.terminator(), null)))
        .forEach(
            circuit -> {
              SegmentSpread spread =
                  new SegmentSpread(circuit, new CableSpread(0.08, 0.1), Tolerances.USUAL);
              int at = circuit.items().size() / 2;
              BiasSizing.largestOhms(spread, at, 5, 0.3)
                  .ifPresent(
                      largest ->
                          assertThat(lowest(spread, at, largest)).isCloseTo(0.3, within(1e-9)));
            });
  }

  /** The lowest idle voltage with resistors of 5 V at one item. */
  private static double lowest(SegmentSpread spread, int at, double eachOhms) {
    List<SegmentItem> items = new ArrayList<>(spread.circuit().items());
    items.set(at, items.get(at).with(items.get(at).terminator(), new BiasResistors(eachOhms, 5)));
    SegmentCircuit circuit =
        new SegmentCircuit(
            items, spread.circuit().hopLengthsMetres(), spread.circuit().ohmsPerMetre());
    return requireNonNull(
            WorstCorner.lowestIdle(new SegmentSpread(circuit, spread.cable(), spread.tolerances())))
        .volts();
  }
}
