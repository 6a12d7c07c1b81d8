package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.pair;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AcceptedReadingsTest {
  private static final int MOST_PARTS = 9;

  /** Two terminators of 120 Ω on a short line are 60 Ω; of 5 %, 57 to 63 Ω (computed). */
  @Test
  void terminatorsOfFivePercentAreAccepted() {
    SegmentCircuit circuit = withoutCable(unit(0, ohms(120)), unit(0, ohms(120)));
    assertThat(AcceptedReadings.pairResistances(spread(circuit)))
        .hasSize(2)
        .allSatisfy(
            range -> {
              assertThat(range.lowOhms()).isCloseTo(57, within(1e-9));
              assertThat(range.highOhms()).isCloseTo(63, within(1e-9));
            });
  }

  /**
   * 60 Ω beside 2 · 560 Ω are 56.95 Ω (computed) as written; at the least of all parts 57 Ω beside
   * 2 · 532 Ω.
   */
  @Test
  void theBiasMayConductThroughItsSupply() {
    SegmentCircuit circuit = withoutCable(unit(0, ohms(120), bias(560, 5)), unit(0, ohms(120)));
    PairResistance written = AcceptedReadings.pairResistances(SegmentSpread.none(circuit)).get(0);
    assertThat(written.lowOhms()).isCloseTo(56.95, within(0.005));
    assertThat(written.highOhms()).isCloseTo(60, within(1e-9));
    assertThat(PairResistance.at(circuit, 0).lowOhms()).isCloseTo(56.95, within(0.005));
    assertThat(AcceptedReadings.pairResistances(spread(circuit)).get(0).lowOhms())
        .isCloseTo(1 / (1 / 57.0 + 1 / 1064.0), within(1e-9));
  }

  /** Computed: 0.1 Ω a metre is 40 Ω out and 40 Ω back, beside the near terminator. */
  @Test
  void eachPlaceHasItsOwnRange() {
    SegmentCircuit circuit = pair(unit(0, ohms(120)), 40, unit(0, ohms(60)));
    List<PairResistance> ranges = AcceptedReadings.pairResistances(SegmentSpread.none(circuit));
    assertThat(ranges.get(0).highOhms()).isCloseTo(1 / (1 / 120.0 + 1 / 140.0), within(1e-9));
    assertThat(ranges.get(1).highOhms()).isCloseTo(1 / (1 / 60.0 + 1 / 200.0), within(1e-9));
  }

  @Test
  void withoutTerminatorsTheMeterMayShowNothing() {
    PairResistance range =
        AcceptedReadings.pairResistances(spread(withoutCable(unit(1, null), unit(1, null)))).get(0);
    assertThat(range.lowOhms()).isCloseTo(12_000, within(1e-6));
    assertThat(range.highOhms()).isInfinite();
  }

  @Test
  void withoutBiasNoIdleVoltageIsExpected() {
    SegmentCircuit circuit = withoutCable(unit(1, ohms(120)), unit(1, ohms(120)));
    assertThat(AcceptedReadings.idleVolts(spread(circuit), 0)).isNull();
  }

  /** Computed: 1/R_B of 532 and 588 Ω, 4/R_T of 114 and 126 Ω, and 0 to 28 unit loads. */
  @Test
  void theIdleRangeIsThatOfAllParts() {
    SegmentCircuit circuit = withoutCable(unit(14, ohms(120), bias(560, 5)), unit(14, ohms(120)));
    AcceptedReadings.IdleRange range =
        requireNonNull(AcceptedReadings.idleVolts(spread(circuit), 1));
    assertThat(range.lowVolts())
        .isCloseTo(4.75 / (588 * (1 / 588.0 + 28 / 12_000.0 + 4 / 114.0)), within(1e-12));
    assertThat(range.highVolts()).isCloseTo(5.25 / (532 * (1 / 532.0 + 4 / 126.0)), within(1e-12));
  }

  @Test
  void someAreFoundByBruteForce() {
    assertThat(checked(51, 40)).isGreaterThan(5);
  }

  @Test
  @Tag("long")
  void theRangesOfAllCornersAreFoundByBruteForce() {
    assertThat(checked(52, 800)).isGreaterThan(150);
  }

  private static long checked(long seed, int count) {
    CableSpread cable =
        CableSpread.ofReadings(Wire.squareMillimetres(0.75), null, Tolerances.USUAL);
    return RandomSegments.of(seed, count, 1, 4)
        .map(circuit -> new SegmentSpread(circuit, cable, Tolerances.USUAL))
        .filter(spread -> new BruteForce(spread, true).parts() <= MOST_PARTS)
        .peek(AcceptedReadingsTest::resistancesAgree)
        .filter(AcceptedReadingsTest::idleAgrees)
        .count();
  }

  private static void resistancesAgree(SegmentSpread spread) {
    List<PairResistance> ranges = AcceptedReadings.pairResistances(spread);
    boolean closed =
        spread.circuit().items().stream()
            .map(SegmentItem::terminator)
            .anyMatch(terminator -> terminator != null && !terminator.capacitorInSeries());
    BruteForce all = new BruteForce(spread, true);
    double[] low =
        BruteForce.least(all.corners(false).map(nodes -> pairOhms(nodes, ranges.size())));
    double[] high =
        closed
            ? BruteForce.greatest(
                all.terminatorsOnly().map(nodes -> pairOhms(nodes, ranges.size())))
            : low;
    for (int item = 0; item < ranges.size(); item++) {
      PairResistance range = ranges.get(item);
      assertThat(range.lowOhms()).as("%s", spread).isCloseTo(low[item], within(1e-9 * low[item]));
      if (closed) {
        assertThat(range.highOhms()).isCloseTo(high[item], within(1e-9 * high[item]));
      } else {
        assertThat(range.highOhms()).isInfinite();
      }
    }
  }

  private static double[] pairOhms(NodalAnalysis nodes, int items) {
    return IntStream.range(0, items).mapToDouble(item -> nodes.transferOhms(item, item)).toArray();
  }

  /** Receivers that take nothing let the line be highest; with all they may, lowest. */
  private static boolean idleAgrees(SegmentSpread spread) {
    if (!spread.circuit().isBiased()) {
      return false;
    }
    SegmentSpread unloaded =
        new SegmentSpread(
            spread.circuit().withItems(item -> item.withUnitLoads(0)),
            spread.cable(),
            spread.tolerances());
    boolean single =
        spread.circuit().items().stream().filter(item -> item.bias() != null).count() == 1;
    double[] low = BruteForce.least(volts(spread));
    double[] high = BruteForce.greatest(volts(unloaded));
    double granted = single ? 1e-9 : 0.15;
    for (int item = 0; item < low.length; item++) {
      AcceptedReadings.IdleRange range = requireNonNull(AcceptedReadings.idleVolts(spread, item));
      assertThat(range.lowVolts()).isBetween((1 - granted) * low[item], (1 + 1e-9) * low[item]);
      assertThat(range.highVolts()).isBetween((1 - 1e-9) * high[item], (1 + granted) * high[item]);
    }
    return true;
  }

  private static Stream<double[]> volts(SegmentSpread spread) {
    return new BruteForce(spread, true).corners(false).map(NodalAnalysis::differences);
  }

  private static SegmentSpread spread(SegmentCircuit circuit) {
    return new SegmentSpread(circuit, new CableSpread(0.09, 0.11), Tolerances.USUAL);
  }

  /** Computed: 200 mV are proved from (0.2 + 0.003) / 0.99 V on. */
  @Test
  void theMetersErrorIsGranted() {
    double least = MeterAccuracy.HAND_METER_VOLTS.leastReadingFor(0.2);
    assertThat(least).isCloseTo(0.205051, within(1e-6));
    assertThat(least - (0.01 * least + 0.003)).isCloseTo(0.2, within(1e-12));
  }

  /** Computed: 100 of something, 1 % and 2 of it: 97 to 103; −0.5 may be anything up to 1.505. */
  @ParameterizedTest
  @CsvSource({
    "100, 103, 110, true",
    "100, 103.1, 110, false",
    "100, 90, 97, true",
    "100, 90, 96.9, false",
    "-0.5, 1.5, 110, true",
    "-0.5, 1.51, 110, false",
    "-100, -90, -97.1, false",
    "-100, -110, -103, true",
    "-100, -97, -90, true",
    "1e9, 90, Infinity, true",
  })
  void aReadingCanBeWithinARange(double reading, double low, double high, boolean expected) {
    if (low <= high) {
      assertThat(new MeterAccuracy(0.01, 2).readings(low, high).contains(reading))
          .isEqualTo(expected);
    } else {
      assertThatThrownBy(() -> new ReadingRange(low, high)).hasMessageContaining("least first");
    }
  }
}
