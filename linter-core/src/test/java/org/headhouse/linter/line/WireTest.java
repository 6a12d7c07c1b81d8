package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WireTest {
  private static final double METRES_PER_1000_FEET = 304.8;

  /**
   * Ohms for 1000 feet at 20 °C: wire table of HyperPhysics, Georgia State University, after Floyd
   * (read), 0.1 %. Ohms a kilometre: computed from the formula, five digits.
   */
  @ParameterizedTest
  @CsvSource({
    "18,  6.385,  20.948",
    "20, 10.15,   33.308",
    "22, 16.14,   52.962",
    "24, 25.67,   84.213",
    "26, 40.81,  133.904",
  })
  void gaugesHaveTheResistanceOfTheTables(int gauge, double per1000Feet, double perKilometre) {
    double ohmsPerMetre = Wire.awg(gauge).resistanceOhmsPerMetre(20);
    assertThat(ohmsPerMetre * METRES_PER_1000_FEET)
        .isCloseTo(per1000Feet, within(per1000Feet * 1e-3));
    assertThat(ohmsPerMetre * 1000).isCloseTo(perKilometre, within(0.0006));
  }

  /** Copper Wire Tables, NBS Handbook 100, 1966 (quoted): 39√92 = 1.1229322; 36 AWG is 0.127 mm. */
  @Test
  void successiveGaugesKeepTheRatioOfTheStandard() {
    for (int gauge = 0; gauge < 40; gauge++) {
      assertThat(Wire.awgDiameterMetres(gauge) / Wire.awgDiameterMetres(gauge + 1))
          .isCloseTo(1.1229322, within(5e-8));
    }
    assertThat(Wire.awgDiameterMetres(36)).isCloseTo(0.127e-3, within(1e-18));
  }

  /** Computed: 84.213 · (1 + 0.00393 · 30) Ω/km. */
  @Test
  void warmCopperHasMoreResistance() {
    assertThat(Wire.awg(24).resistanceOhmsPerMetre(50) * 1000).isCloseTo(94.142, within(0.0006));
    assertThat(Wire.awg(24).resistanceOhmsPerMetre(-20) * 1000)
        .isCloseTo(84.213 * (1 - 0.00393 * 40), within(0.0006));
  }

  /**
   * IEC 60228 class 2 (quoted) gives the most that a stranded conductor may have at 20 °C; copper
   * of that area alone stays under it, by 4 to 7 %.
   */
  @ParameterizedTest
  @CsvSource({"0.5, 36.0", "0.75, 24.5", "1.0, 18.1", "1.5, 12.1"})
  void areasStayUnderTheMostOfTheStandard(double squareMillimetres, double mostPerKilometre) {
    double perKilometre =
        Wire.squareMillimetres(squareMillimetres).resistanceOhmsPerMetre(20) * 1000;
    assertThat(perKilometre).isBetween(0.93 * mostPerKilometre, 0.96 * mostPerKilometre);
    assertThat(perKilometre).isCloseTo(17.241 / squareMillimetres, within(1e-9));
    assertThat(Wire.squareMillimetres(squareMillimetres).greatestOhmsPerMetre(20) * 1000)
        .isCloseTo(mostPerKilometre, within(1e-9));
  }

  /** 7.41 Ω/km for 2.5 mm2: IEC 60228 class 2, from memory. No listed area has more over copper. */
  @Test
  void anAreaThatTheStandardDoesNotHaveIsTakenAsTheWorst() {
    assertThat(Wire.squareMillimetres(0.34).greatestOhmsPerMetre(20) * 1000)
        .isCloseTo(17.241 / 0.34 * 7.41 / (17.241 / 2.5), within(1e-9));
  }

  /** Computed: 36.0 · (1 + 0.00393 · 30) · 1.02, and 84.213 of a gauge that has its value. */
  @Test
  void theSpreadOfACableIsThatOfMakeAndTemperature() {
    Wire area = Wire.squareMillimetres(0.5);
    CableSpread hot = CableSpread.atWeakest(area, null, Tolerances.USUAL);
    assertThat(hot.greatestOhmsPerMetre() * 1000)
        .isCloseTo(36 * (1 + 0.00393 * 30) * 1.02, within(1e-9));
    assertThat(hot.leastOhmsPerMetre())
        .isCloseTo(area.resistanceOhmsPerMetre(50) * 0.98, within(1e-12));
    assertThat(CableSpread.atWeakest(area, 20.0, Tolerances.USUAL).greatestOhmsPerMetre() * 1000)
        .isCloseTo(36 * 1.02, within(1e-9));
    CableSpread readings = CableSpread.ofReadings(Wire.awg(24), null, Tolerances.NONE);
    assertThat(readings.leastOhmsPerMetre() * 1000)
        .isCloseTo(84.213 * (1 - 0.00393 * 30), within(0.0006));
    assertThat(readings.greatestOhmsPerMetre() * 1000).isCloseTo(94.142, within(0.0006));
    assertThat(CableSpread.ofReadings(Wire.awg(24), -30.0, Tolerances.NONE))
        .isEqualTo(CableSpread.atWeakest(Wire.awg(24), -30.0, Tolerances.NONE));
  }

  /** The RS-485 Design Guide, TI SLLA272 (read): 22 AWG reaches a loop of 120 Ω at about 1200 m. */
  @Test
  void theLoopReachesTheTerminatorAtTheLengthOfTheGuide() {
    double loopOhms = 2 * 1200 * Wire.awg(22).resistanceOhmsPerMetre(20);
    assertThat(loopOhms).isCloseTo(120, within(0.1 * 120));
  }
}
