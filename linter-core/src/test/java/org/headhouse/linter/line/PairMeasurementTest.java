package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.unit;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hand meter, parts of 5 %, cable of 2 %, −10 to 50 °C: common practice, no source. */
class PairMeasurementTest {
  private static final MeterAccuracy METER = MeterAccuracy.HAND_METER_OHMS;
  private static final Wire AWG_24 = Wire.awg(24);

  /** Ten units of 1/8 of a load along a cable of 24 AWG, terminators and bias as usual. */
  private static SegmentSpread line(double metres) {
    SegmentItem first = unit(0.125, ohms(120), bias(560, 5));
    SegmentItem last = unit(0.125, ohms(120));
    List<SegmentItem> items =
        IntStream.range(0, 10)
            .mapToObj(item -> item == 0 ? first : item == 9 ? last : unit(0.125, null))
            .toList();
    SegmentCircuit circuit =
        new SegmentCircuit(
            items, Collections.nCopies(9, metres / 9), AWG_24.resistanceOhmsPerMetre(20));
    return new SegmentSpread(
        circuit, CableSpread.ofReadings(AWG_24, null, Tolerances.USUAL), Tolerances.USUAL);
  }

  /** Two of 120 Ω read 60 Ω, one 120 Ω, three 40 Ω: the tolerances do not reach that far. */
  @ParameterizedTest
  @CsvSource({"0", "50", "100"})
  void aShortLineHidesNothing(double metres) {
    for (int at : new int[] {0, 9}) {
      PairMeasurement test = PairMeasurement.asWritten(line(metres), METER, at);
      for (int item = 0; item < 10; item++) {
        assertThat(test.hidesExtra(item, 120)).as("%s m, at %s", metres, item).isFalse();
      }
      assertThat(test.hidesMissing(0)).isFalse();
      assertThat(test.hidesMissing(9)).isFalse();
    }
  }

  /**
   * A third terminator at the far end of 900 m: 120 Ω beside 151.6 + 120 Ω are 83.2 Ω, beside 151.6
   * + 60 Ω 76.6 Ω, so 8 % less, and tolerances alone make more than that (computed).
   */
  @Test
  void aLongLineHidesAThirdTerminatorFarOff() {
    SegmentSpread line = line(900);
    PairMeasurement fromHead = PairMeasurement.asWritten(line, METER, 0);
    PairMeasurement fromEnd = PairMeasurement.asWritten(line, METER, 9);
    assertThat(fromHead.hidesExtra(0, 120)).isFalse();
    assertThat(fromHead.hidesExtra(9, 120)).isTrue();
    assertThat(fromEnd.hidesExtra(9, 120)).isFalse();
    assertThat(fromEnd.hidesExtra(0, 120)).isTrue();
    assertThat(fromHead.hidesMissing(0)).isFalse();
  }

  /** 120 Ω and more against the 500 Ω and more of loads and bias. */
  @Test
  void terminatorsOffShowAnyThatIsLeft() {
    for (double metres : new double[] {0, 300, 900, 1200}) {
      PairMeasurement test = PairMeasurement.open(line(metres), METER, 0);
      assertThat(IntStream.range(0, 10).filter(item -> test.hidesExtra(item, 120))).isEmpty();
      assertThat(test.range().highOhms()).isInfinite();
    }
  }

  /** Out and back 900 m of 24 AWG: 0.16843 Ω a metre at 20 °C (NBS Handbook 100), 151.6 Ω. */
  @Test
  void theShortedEndShowsTheLoop() {
    SegmentSpread line = line(900);
    PairMeasurement written =
        PairMeasurement.shorted(SegmentSpread.none(line.circuit()), METER, 0, 9);
    assertThat(written.range().highOhms()).isCloseTo(151.6, within(0.05));
    PairMeasurement test = PairMeasurement.shorted(line, METER, 0, 9);
    assertThat(test.accepted().contains(151.6)).isTrue();
    assertThat(test.hidesExtra(0, 120)).isFalse();
    assertThat(test.hidesExtra(1, 120)).isFalse();
    assertThat(test.hidesExtra(9, 120)).isTrue();
  }

  @Test
  void someReadingsOfSoundAndFaultyLinesAgree() {
    assertThat(checked(61, 40)).isGreaterThan(10);
  }

  @Test
  @Tag("long")
  void readingsOfSoundAndFaultyLinesAgree() {
    assertThat(checked(62, 1500)).isGreaterThan(500);
  }

  /**
   * Whatever parts a sound line has, its reading is accepted; and whatever parts a line with one
   * terminator too many or too few has, its reading is refused where the fault is said to show. The
   * readings come from the full matrix, their parts from anywhere within the tolerances.
   */
  private static long checked(long seed, int count) {
    Random random = new Random(seed);
    long shown = 0;
    for (int i = 0; i < count; i++) {
      SegmentCircuit circuit = RandomSegments.one(random, 2, 6);
      if (circuit.items().stream().allMatch(item -> item.steadyTerminatorSiemens() == 0)) {
        continue;
      }
      SegmentSpread spread =
          new SegmentSpread(
              circuit, CableSpread.ofReadings(AWG_24, null, Tolerances.USUAL), Tolerances.USUAL);
      int at = random.nextInt(circuit.items().size());
      int fault = random.nextInt(circuit.items().size());
      PairMeasurement test = PairMeasurement.asWritten(spread, METER, at);
      boolean terminated = circuit.items().get(fault).steadyTerminatorSiemens() > 0;
      for (int trial = 0; trial < 8; trial++) {
        SegmentCircuit parts = anyParts(spread, random);
        assertThat(readings(parts, at, random)).allMatch(test.accepted()::contains);
        if (!terminated && !test.hidesExtra(fault, 120)) {
          SegmentCircuit extra = with(parts, fault, ohms(114 + 12 * random.nextDouble()));
          assertThat(readings(extra, at, random)).noneMatch(test.accepted()::contains);
          shown++;
        }
        if (terminated && !test.hidesMissing(fault)) {
          SegmentCircuit missing = with(parts, fault, null);
          assertThat(readings(missing, at, random)).noneMatch(test.accepted()::contains);
          shown++;
        }
      }
    }
    return shown;
  }

  private static SegmentCircuit with(
      SegmentCircuit circuit, int item, @Nullable Terminator terminator) {
    List<SegmentItem> items =
        IntStream.range(0, circuit.items().size())
            .mapToObj(
                index -> {
                  SegmentItem one = circuit.items().get(index);
                  return index == item ? one.with(terminator, one.bias()) : one;
                })
            .toList();
    return new SegmentCircuit(items, circuit.hopLengthsMetres(), circuit.ohmsPerMetre());
  }

  /** Each part on its own, and one temperature; 1 Ω a metre, so that lengths are ohms. */
  private static SegmentCircuit anyParts(SegmentSpread spread, Random random) {
    CableSpread cable = spread.cable();
    List<SegmentItem> items =
        spread.circuit().items().stream()
            .map(
                item -> {
                  Terminator terminator = item.terminator();
                  BiasResistors bias = item.bias();
                  return item.with(
                      terminator == null
                          ? null
                          : new Terminator(
                              terminator.resistorOhms() * off(random),
                              terminator.capacitorInSeries()),
                      bias == null
                          ? null
                          : new BiasResistors(bias.eachOhms() * off(random), bias.supplyVolts()));
                })
            .toList();
    List<Double> ohms =
        spread.circuit().hopLengthsMetres().stream()
            .map(
                metres ->
                    metres
                        * (cable.leastOhmsPerMetre()
                            + random.nextDouble()
                                * (cable.greatestOhmsPerMetre() - cable.leastOhmsPerMetre())))
            .toList();
    return new SegmentCircuit(items, ohms, 1);
  }

  private static double off(Random random) {
    return 0.95 + 0.1 * random.nextDouble();
  }

  /** Loads and bias conduct, or they do not; the meter is off by as much as it may, or less. */
  private static List<Double> readings(SegmentCircuit circuit, int at, Random random) {
    boolean closed = circuit.items().stream().anyMatch(it -> it.steadyTerminatorSiemens() > 0);
    double low = NodalAnalysis.loaded(circuit, false).transferOhms(at, at);
    double high = closed ? NodalAnalysis.terminatorsOnly(circuit).transferOhms(at, at) : low;
    return DoubleStream.of(low, high)
        .flatMap(
            ohms -> DoubleStream.of(-1, 1, 2 * random.nextDouble() - 1).map(off -> read(ohms, off)))
        .boxed()
        .toList();
  }

  /** A reading r of which {@code ohms} is no further away than 1 % of r and 0.8 Ω. */
  private static double read(double ohms, double off) {
    return (ohms + off * 0.8 * 0.999999) / (1 - off * 0.01 * 0.999999);
  }
}
