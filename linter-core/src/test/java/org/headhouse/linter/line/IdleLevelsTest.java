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

class IdleLevelsTest {

  /** Computed: 560 Ω, 60 Ω and 560 Ω in series over the supply. */
  @ParameterizedTest
  @CsvSource({"5, true", "12, true", "24, false"})
  void theSupplyIsDivided(double supplyVolts, boolean borne) {
    IdleLevels here = levels(withoutCable(unit(0, ohms(60), bias(560, supplyVolts)))).get(0);
    assertThat(here.d1Volts()).isCloseTo(supplyVolts * 620 / 1180, within(1e-12));
    assertThat(here.d0Volts()).isCloseTo(supplyVolts * 560 / 1180, within(1e-12));
    assertThat(here.isBorne()).isEqualTo(borne);
  }

  /**
   * Computed by hand: both conductors are loaded by 12 kΩ over 1 kΩ of cable, and no terminator.
   */
  @Test
  void loadsPullBothConductorsToCommon() {
    List<IdleLevels> levels = levels(pair(unit(0, null, bias(500, 5)), 1000, unit(1, null)));
    assertThat(levels.get(0).d0Volts()).isCloseTo(0, within(1e-12));
    assertThat(levels.get(0).d1Volts()).isCloseTo(5 * 13_000 / 13_500.0, within(1e-12));
    assertThat(levels.get(1).d1Volts()).isCloseTo(5 * 12_000 / 13_500.0, within(1e-12));
  }

  /** Two at one item are one: as at two items that share their terminals. */
  @Test
  void resistorsBesideOthersAreOne() {
    BiasResistors pull = bias(4700, 3.3);
    BiasResistors fitted = new BiasResistors(560, 5, 0.01);
    BiasResistors both = pull.beside(fitted, Tolerances.USUAL);
    List<IdleLevels> apart = levels(withoutCable(unit(2, ohms(60), pull), unit(0, null, fitted)));
    IdleLevels together = levels(withoutCable(unit(2, ohms(60), both))).get(0);
    assertThat(together.d1Volts()).isCloseTo(apart.get(0).d1Volts(), within(1e-12));
    assertThat(together.d0Volts()).isCloseTo(apart.get(1).d0Volts(), within(1e-12));
    assertThat(both.tolerance()).isEqualTo(0.05);
    assertThat(both.isWeak()).isFalse();
  }

  /** TIA/EIA-485-A as TI SLLA272 tells it (read): −7 to +12 V. */
  @ParameterizedTest
  @CsvSource({
    "12, -7, true",
    "12.01, 0, false",
    "0, 12.01, false",
    "0, -7.01, false",
    "-7.01, 0, false",
  })
  void theLimitsAreThoseOfTheStandard(double d1Volts, double d0Volts, boolean borne) {
    assertThat(new IdleLevels(d1Volts, d0Volts).isBorne()).isEqualTo(borne);
  }

  @Test
  void withoutBiasTheyAreOpen() {
    assertThat(IdleLevels.ofAllItems(withoutCable(unit(1, ohms(120))))).isNull();
  }

  private static List<IdleLevels> levels(SegmentCircuit circuit) {
    return requireNonNull(IdleLevels.ofAllItems(circuit));
  }
}
