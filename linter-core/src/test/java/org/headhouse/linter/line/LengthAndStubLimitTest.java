package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthAndStubLimitTest {

  /** TI SLLA272 and MODBUS over Serial Line V1.02 §3.4.3 (both read). */
  @Test
  void theLongestLinesAreThoseOfTheGuides() {
    assertThat(LengthLimit.LONGEST_METRES).isCloseTo(4000 * 0.3048, within(20.0));
    assertThat(LengthLimit.MODBUS_METRES).isEqualTo(1000);
    assertThat(StubLimit.LONGEST_METRES).isEqualTo(20);
  }

  /**
   * Points in print lie about where the two forms are: 10 Mbit/s at 40 ft (TI SLLA272, read); line
   * type B, 500 kbit/s at 200 m and 187.5 kbit/s at 600 m (EN 50170, quoted). The optimistic form
   * is within a fifth of them, the careful one a tenth of it.
   */
  @ParameterizedTest
  @CsvSource({"10000000, 12.192", "500000, 200", "187500, 600"})
  void theOptimisticFormIsNearThePointsInPrint(int baud, double metres) {
    assertThat(LengthLimit.optimisticMetres(baud)).isCloseTo(metres, within(0.2 * metres));
    assertThat(LengthLimit.carefulMetres(baud))
        .isCloseTo(LengthLimit.optimisticMetres(baud) / 10, within(1e-9));
  }

  /** Computed: 10⁸ and 10⁷ m·bit/s. */
  @ParameterizedTest
  @CsvSource({"9600, 10416.667, 1041.667", "115200, 868.056, 86.806"})
  void lengthTimesRateIsConstant(int baud, double optimistic, double careful) {
    assertThat(LengthLimit.optimisticMetres(baud)).isCloseTo(optimistic, within(0.0005));
    assertThat(LengthLimit.carefulMetres(baud)).isCloseTo(careful, within(0.0005));
  }

  /** Data sheet SN65HVD1x, Texas Instruments, table of stub lengths (read), ±0.005 m. */
  @ParameterizedTest
  @CsvSource({"100, 2.34", "10, 0.23", "3, 0.07"})
  void aStubIsATenthOfTheRise(double riseNanoseconds, double metres) {
    assertThat(StubLimit.metres(riseNanoseconds * 1e-9, 0.78)).isCloseTo(metres, within(0.005));
  }

  @Test
  void aSlowerCableMakesTheStubShorter() {
    assertThat(StubLimit.metres(100e-9, StubLimit.LEAST_VELOCITY_FACTOR))
        .isCloseTo(2.338381 * 0.66 / 0.78, within(1e-6));
  }

  /** The shorter of 20 m and a tenth of the rise; without a rise 20 m. */
  @Test
  void oneLimitHoldsForAll() {
    assertThat(StubLimit.longestMetres(null, 0.66)).isEqualTo(20);
    assertThat(StubLimit.longestMetres(10e-6, 0.66)).isEqualTo(20);
    assertThat(StubLimit.longestMetres(100e-9, 0.78)).isCloseTo(2.34, within(0.005));
  }

  /** MODBUS over Serial Line V1.02 §3.4.3 (read): 1000 m at 9600 bit/s, AWG 26 or wider. */
  @ParameterizedTest
  @CsvSource({"9600, 26, true", "1200, 18, true", "19200, 24, false", "9600, 28, false"})
  void theModbusLengthHasConditions(int baud, int gauge, boolean given) {
    assertThat(LengthLimit.isGivenByModbus(baud, Wire.awg(gauge))).isEqualTo(given);
  }

  /**
   * 120 Ω and 1 nF (MODBUS over Serial Line V1.02 §3.4.5, read) are 0.12 µs; a bit at 9600 is
   * 104.17 µs; 99.93 m at two thirds of the speed of light are half a microsecond each way
   * (computed).
   */
  @Test
  void aCapacitorIsSetBesideBitAndRoundTrip() {
    TerminatorTiming timing = TerminatorTiming.of(120, 1e-9, 9600, 99.930819, 2 / 3.0);
    assertThat(timing.timeConstantSeconds()).isCloseTo(0.12e-6, within(1e-15));
    assertThat(timing.bitSeconds()).isCloseTo(104.1667e-6, within(1e-10));
    assertThat(timing.roundTripSeconds()).isCloseTo(1e-6, within(1e-12));
  }
}
