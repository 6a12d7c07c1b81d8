package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SegmentFiguresTest {
  private static final SegmentCircuit CIRCUIT =
      new SegmentCircuit(
          List.of(
              new SegmentItem("in the boiler room", 1, ohms(120), bias(560, 5)),
              new SegmentItem("Rose House", 0.125, null, null),
              new SegmentItem("Hardening Bay", 0.5, ohms(120), null)),
          List.of(30.0, 50.0),
          0.1);

  @Test
  void theFiguresAreThoseOfTheSegment() {
    SegmentFigures figures = SegmentFigures.of(CIRCUIT, 0);
    assertThat(figures.items())
        .containsExactly("in the boiler room", "Rose House", "Hardening Bay");
    assertThat(figures.lengthMetres()).isEqualTo(80);
    assertThat(figures.loopResistanceOhms()).isCloseTo(16, within(1e-12));
    assertThat(figures.unitLoads()).isEqualTo(1.625);
    assertThat(figures.idleVolts()).isEqualTo(IdleVoltage.ofAllItems(CIRCUIT)).hasSize(3);
    assertThat(figures.lowestIdle()).extracting(IdleVoltage::item).isEqualTo(2);
    assertThat(figures.weakestReceived())
        .isEqualTo(ReceivedVoltage.weakestOfItems(CIRCUIT))
        .isNotNull();
    assertThat(figures.pairResistance()).isEqualTo(PairResistance.at(CIRCUIT, 0));
    assertThat(SegmentFigures.of(CIRCUIT, 2).pairResistance())
        .isEqualTo(PairResistance.at(CIRCUIT, 2));
  }

  @Test
  void withoutBiasAndUnitsThoseFiguresAreMissing() {
    SegmentItem alone = new SegmentItem("alone", 1, ohms(120), null);
    SegmentFigures figures =
        SegmentFigures.of(new SegmentCircuit(List.of(alone), List.of(), 0.1), 0);
    assertThat(figures.idleVolts()).isNull();
    assertThat(figures.lowestIdle()).isNull();
    assertThat(figures.weakestReceived()).isNull();
    assertThat(figures.lengthMetres()).isZero();
  }

  /** Which end the chain is told from makes no difference. */
  @Test
  void aSegmentToldFromItsEndHasTheSameFigures() {
    RandomCases.each(
        300,
        random -> {
          SegmentCircuit circuit = RandomSegments.one(random, 2, 30);
          int end = circuit.items().size() - 1;
          SegmentFigures figures = SegmentFigures.of(circuit, 0);
          SegmentFigures mirrored = SegmentFigures.of(reversed(circuit), end);
          assertThat(mirrored.pairResistance().lowOhms())
              .isCloseTo(figures.pairResistance().lowOhms(), within(1e-9));
          ReceivedVoltage weakest = figures.weakestReceived();
          ReceivedVoltage other = mirrored.weakestReceived();
          assertThat(weakest == null).isEqualTo(other == null);
          if (weakest != null && other != null) {
            assertThat(other.volts()).isCloseTo(weakest.volts(), within(1e-12));
          }
          List<Double> idle = figures.idleVolts();
          List<Double> mirroredIdle = mirrored.idleVolts();
          assertThat(idle == null).isEqualTo(mirroredIdle == null);
          if (idle != null && mirroredIdle != null) {
            for (int item = 0; item <= end; item++) {
              assertThat(mirroredIdle.get(end - item)).isCloseTo(idle.get(item), within(1e-12));
            }
          }
        });
  }

  private static SegmentCircuit reversed(SegmentCircuit circuit) {
    List<SegmentItem> items = new ArrayList<>(circuit.items());
    List<Double> hops = new ArrayList<>(circuit.hopLengthsMetres());
    Collections.reverse(items);
    Collections.reverse(hops);
    return new SegmentCircuit(items, hops, circuit.ohmsPerMetre());
  }

  /** Computed: 20 · log10 of the ratio to 0.2 V. */
  @ParameterizedTest
  @CsvSource({"0.2, 0", "0.4, 6.0206", "2, 20", "0.1, -6.0206", "0, -Infinity", "-1, -Infinity"})
  void theMarginIsOverTheThreshold(double volts, double decibels) {
    double margin = Levels.marginDecibels(volts);
    if (Double.isInfinite(decibels)) {
      assertThat(margin).isEqualTo(decibels);
    } else {
      assertThat(margin).isCloseTo(decibels, within(0.00005));
    }
  }
}
