package org.headhouse.linter.line;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.headhouse.linter.line.Segments.bias;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.pair;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IdleVoltageTest {

  /** Computed: {@code V = Vs / (R_B · (1/R_B + ΣUL/12 kΩ + 2 · Σ1/R_T))}, to four digits. */
  @ParameterizedTest
  @CsvSource({
    "120, 5.00, 450,  0, 0.3125",
    "120, 5.00, 450, 28, 0.2933",
    "120, 5.00, 450, 32, 0.2907",
    "120, 5.00, 560,  0, 0.2542",
    "120, 5.00, 560, 28, 0.2384",
    "120, 5.00, 560, 32, 0.2363",
    "120, 5.00, 650,  0, 0.2206",
    "120, 5.00, 650, 28, 0.2068",
    "120, 5.00, 650, 32, 0.2049",
    "150, 5.00, 450,  0, 0.3846",
    "150, 5.00, 450, 28, 0.3559",
    "150, 5.00, 450, 32, 0.3521",
    "150, 5.00, 650,  0, 0.2727",
    "150, 5.00, 650, 28, 0.2519",
    "150, 5.00, 650, 32, 0.2492",
    // Within 450 to 650 ohms and yet too weak.
    "120, 4.75, 650, 28, 0.1964",
  })
  void withoutCableResistanceTheFormulaHolds(
      double terminatorOhms, double supplyVolts, double eachOhms, double loads, double expected) {
    SegmentCircuit circuit =
        withoutCable(
            unit(loads / 4, ohms(terminatorOhms), bias(eachOhms, supplyVolts)),
            unit(loads / 2, null),
            unit(loads / 4, ohms(terminatorOhms)));
    assertThat(idle(circuit))
        .allSatisfy(volts -> assertThat(volts).isCloseTo(expected, within(0.00006)));
  }

  /**
   * The RS-485 Design Guide, TI SLLA272 (read): 4.75 V, 0.25 V, 120 Ω and 32 unit loads need 528 Ω,
   * where the far terminator is raised so that with the bias resistors across it it makes 120 Ω.
   */
  @Test
  void theResistorsOfTheDesignGuideGiveItsVoltage() {
    double raisedOhms = 1 / (1 / 120.0 - 1 / (2 * 528.0));
    SegmentCircuit circuit =
        withoutCable(unit(16, ohms(120)), unit(16, ohms(raisedOhms), bias(528, 4.75)));
    assertThat(idle(circuit).get(0)).isCloseTo(0.25, within(0.25 * 0.5 / 528));
  }

  /**
   * RS-422 and RS-485 Application Note, B&B Electronics, example 1 (read in part): ten nodes, each
   * 4.7 kΩ up and down, two terminators of 120 Ω, 5 V → 285 mV, ±2 mV; recomputed 286.5 mV. Its
   * model of a load, 12 kΩ across the pair, is built here from terminators; ours is 12 kΩ to
   * common.
   */
  @Test
  void theExampleOfTheApplicationNoteHoldsWithItsOwnLoadModel() {
    Stream<SegmentItem> nodes =
        IntStream.range(0, 10)
            .mapToObj(
                node -> {
                  boolean atEnd = node == 0 || node == 9;
                  double acrossOhms = atEnd ? 1 / (1 / 120.0 + 1 / 12_000.0) : 12_000;
                  return unit(0, ohms(acrossOhms), bias(4700, 5));
                });
    List<Double> idle = idle(withoutCable(nodes.toArray(SegmentItem[]::new)));
    assertThat(idle).hasSize(10);
    assertThat(idle.get(4)).isCloseTo(0.285, within(0.002)).isCloseTo(0.2865, within(0.00006));
  }

  /**
   * B&B Electronics, the same (read in part): 32 such nodes without terminators make 375 Ω, need
   * 0.53 mA for 200 mV, 9375 Ω in all from 5 V; so each resistor is (9375 − 375)/2 = 4500 Ω. 1 %.
   */
  @Test
  void theBudgetOfTheApplicationNoteHoldsWithItsOwnLoadModel() {
    Stream<SegmentItem> nodes =
        IntStream.range(0, 32)
            .mapToObj(node -> unit(0, ohms(12_000), node == 7 ? bias(4500, 5) : null));
    List<Double> idle = idle(withoutCable(nodes.toArray(SegmentItem[]::new)));
    assertThat(idle.get(20)).isCloseTo(0.2, within(0.002));
  }

  /** Computed by hand: a loop of two bias resistors, the cable out and back, and a terminator. */
  @Test
  void cableAndFarTerminatorDivideTheVoltage() {
    SegmentCircuit circuit = pair(unit(0, null, bias(500, 5)), 40, unit(0, ohms(120)));
    double loopAmperes = 5 / (2 * 500 + 2 * 40 + 120.0);
    assertThat(idle(circuit).get(0)).isCloseTo(loopAmperes * 200, within(1e-12));
    assertThat(idle(circuit).get(1)).isCloseTo(loopAmperes * 120, within(1e-12));
  }

  @Test
  void aTerminatorWithACapacitorIsOpen() {
    Terminator open = Terminator.resistorAndCapacitor(120);
    assertThat(idle(withoutCable(unit(1, open, bias(560, 5)), unit(1, open))))
        .isEqualTo(idle(withoutCable(unit(1, null, bias(560, 5)), unit(1, null))));
  }

  @Test
  void withoutBiasThereIsNone() {
    SegmentCircuit unbiased = withoutCable(unit(1, ohms(120)), unit(1, ohms(120)));
    assertThat(IdleVoltage.ofAllItems(unbiased)).isNull();
  }

  @Test
  void theLowestMayBeThatOfARepeater() {
    SegmentCircuit circuit =
        new SegmentCircuit(
            List.of(
                unit(1, ohms(120), bias(560, 5)),
                unit(1, null),
                unit(1, null),
                new SegmentItem("far", 1, ohms(120), null)),
            List.of(100.0, 0.0, 500.0),
            0.1);
    List<Double> idle = idle(circuit);
    assertThat(idle.get(3)).isLessThan(idle.get(1));
    assertThat(IdleVoltage.lowest(idle)).isEqualTo(new IdleVoltage(3, idle.get(3)));
  }

  private static List<Double> idle(SegmentCircuit circuit) {
    return requireNonNull(IdleVoltage.ofAllItems(circuit));
  }
}
