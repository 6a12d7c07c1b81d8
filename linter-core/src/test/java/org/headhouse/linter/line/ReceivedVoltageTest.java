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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ReceivedVoltageTest {

  /** Computed: 1000 m of 24 AWG into one terminator of 120 Ω leave 120/(120 + 168.43) = 0.416. */
  @Test
  void aKilometreOfCableDividesWithTheTerminator() {
    SegmentCircuit circuit =
        new SegmentCircuit(
            List.of(unit(0, null), unit(0, ohms(120))),
            List.of(1000.0),
            Wire.awg(24).resistanceOhmsPerMetre(20));
    assertWeakest(circuit, 0, 1, 1.5 * 120 / (120 + 168.43), 1e-5);
  }

  @Test
  void theReceiverWithTheTerminatorIsTheWeaker() {
    assertWeakest(pair(unit(0, ohms(120)), 40, unit(0, null)), 1, 0, 1.5 * 120 / 200, 1e-12);
  }

  /** Computed: 12 kΩ from each conductor to common is 24 kΩ across the pair. */
  @Test
  void aUnitLoadIsToCommon() {
    double acrossOhms = 24_000 / 32.0;
    double expected = 1.5 * acrossOhms / (acrossOhms + 2 * 100);
    assertWeakest(pair(unit(0, null), 100, unit(32, null)), 0, 1, expected, 1e-12);
  }

  @Test
  void aTerminatorWithACapacitorCountsAsItsResistor() {
    SegmentItem open = unit(0, Terminator.resistorAndCapacitor(120));
    assertWeakest(pair(unit(0, null), 40, open), 0, 1, 1.5 * 120 / 200, 1e-12);
  }

  /**
   * Computed by hand, with d = D1 − D0 at the receiver: (d + 1.5)/2R + d/R_T + (d − Vs)/2R_B = 0.
   * The driver pulls D1 down, the bias up, so that less arrives.
   */
  @ParameterizedTest
  @CsvSource({
    "20, 560, 5",
    "60, 560, 5",
    // The bias overrules the driver.
    "300, 450, 12",
  })
  void theBiasOpposesTheDriver(double conductorOhms, double eachOhms, double supplyVolts) {
    double siemens = 1 / (2 * conductorOhms) + 1 / 120.0 + 1 / (2 * eachOhms);
    double expected = (1.5 / (2 * conductorOhms) - supplyVolts / (2 * eachOhms)) / siemens;
    SegmentItem biased = unit(0, ohms(120), bias(eachOhms, supplyVolts));
    assertWeakest(pair(unit(0, null), conductorOhms, biased), 0, 1, expected, 1e-12);
    assertWeakest(pair(biased, conductorOhms, unit(0, null)), 1, 0, expected, 1e-12);
  }

  @Test
  void biasBesideTheSenderChangesNothing() {
    SegmentItem biased = unit(0, null, bias(5000, 1));
    SegmentCircuit circuit = pair(biased, 40, unit(0, ohms(120)));
    assertWeakest(circuit, 0, 1, 1.5 * 120 / 200, 1e-12);
  }

  /** Of two sides of repeaters, the far one. */
  @Test
  void theOneWithTheLowerTerminatorReceivesLess() {
    SegmentItem near = new SegmentItem("near", 0, ohms(120), null);
    SegmentItem far = new SegmentItem("far", 0, ohms(60), null);
    ReceivedVoltage weakest = requireNonNull(ReceivedVoltage.weakestOfItems(pair(near, 40, far)));
    assertThat(List.of(weakest.from(), weakest.to())).containsExactly(0, 1);
    assertThat(weakest.volts()).isCloseTo(1.5 * 60 / (60 + 2 * 40), within(1e-12));
    assertThat(ReceivedVoltage.weakestOfItems(withoutCable(near))).isNull();
  }

  /** In the middle, where the bias is, it may overrule the driver while it does not at the end. */
  @Test
  void theWeakestReceiverNeedNotBeTheFarOne() {
    SegmentCircuit circuit =
        new SegmentCircuit(
            List.of(unit(0, null), unit(0, null, bias(100, 12)), unit(0, ohms(120))),
            List.of(2000.0, 2000.0),
            0.1);
    ReceivedVoltage weakest = requireNonNull(ReceivedVoltage.weakestOfItems(circuit));
    assertThat(weakest.to()).isEqualTo(1);
    assertThat(weakest.volts()).isNegative();
  }

  @Test
  void ofEqualPairsTheFirstItemSends() {
    SegmentItem end = unit(1, ohms(120));
    assertWeakest(withoutCable(end, unit(1, null), end), 0, 1, 1.5, 0);
    SegmentCircuit symmetric =
        new SegmentCircuit(
            List.of(end, unit(1, null), unit(1, null), end), List.of(70.0, 110.0, 70.0), 0.1);
    ReceivedVoltage weakest = requireNonNull(ReceivedVoltage.weakestOfItems(symmetric));
    assertThat(List.of(weakest.from(), weakest.to())).containsExactly(0, 3);
  }

  /** The last item sends to the first only: no other receives less from it. */
  @Test
  void ofEqualSendersEachItemHearsTheFirst() {
    SegmentItem end = unit(1, ohms(120));
    SegmentCircuit symmetric =
        new SegmentCircuit(List.of(end, unit(1, null), end), List.of(90.0, 90.0), 0.1);
    assertThat(ReceivedVoltage.weakestAtEachItem(symmetric))
        .extracting(ReceivedVoltage::from)
        .containsExactly(2, 0, 0);
  }

  private static void assertWeakest(
      SegmentCircuit circuit, int from, int to, double volts, double tolerance) {
    ReceivedVoltage weakest = requireNonNull(ReceivedVoltage.weakestOfItems(circuit));
    assertThat(List.of(weakest.from(), weakest.to())).containsExactly(from, to);
    assertThat(weakest.volts()).isCloseTo(volts, within(tolerance));
  }
}
