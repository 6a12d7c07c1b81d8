package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;
import static org.headhouse.linter.line.Segments.ohms;
import static org.headhouse.linter.line.Segments.unit;
import static org.headhouse.linter.line.Segments.withoutCable;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * MODBUS over Serial Line V1.02 §3.4.6 allows 450 to 650 Ω; of those, E24 has 470, 510, 560 and 620
 * (IEC 60063, from memory).
 */
class PreferredBiasTest {
  private static final double VOLTS = 0.25;
  private static final SegmentItem END = unit(0, ohms(120));

  /**
   * Between two terminators of 120 Ω without loads, R_B = 30 Ω · (Vs / V − 1): the supply is chosen
   * so that just these resistors give 0.25 V (computed).
   */
  @ParameterizedTest
  @CsvSource({
    "650, 620",
    "900, 620",
    "621, 620",
    "619, 560",
    "511, 510",
    "509, 470",
    "471, 470",
    // The next lower one on sale is 430 Ω.
    "469, 0",
    "451, 0",
    "449, 0",
    "100, 0",
    // No series of resistors begins so low.
    "0.5, 0",
  })
  void theLargestOnSaleWithinTheStandardIsFound(double largestOhms, double expectedOhms) {
    double supplyVolts = VOLTS * (largestOhms / 30 + 1);
    OptionalDouble found = BiasSizing.preferredOhms(withoutCable(END, END), 0, supplyVolts, VOLTS);
    assertThat(found.orElse(0)).isEqualTo(expectedOhms);
  }

  @Test
  void aPairWithoutLoadTakesTheLargestOfTheStandard() {
    SegmentItem bare = unit(0, null);
    assertThat(BiasSizing.preferredOhms(withoutCable(bare, bare), 0, 5, VOLTS)).hasValue(620);
    assertThat(BiasSizing.preferredOhms(withoutCable(bare, bare), 0, 0.2, VOLTS)).isEmpty();
  }
}
