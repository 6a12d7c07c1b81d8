package org.headhouse.linter.rules.termination;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 20 %: common practice, no source. 150 ohm, and 120 ohm in series with 1 nF: MODBUS over Serial
 * Line V1.02 §3.4.5.
 */
class TerminationMismatchTest {
  private static final String RULE = "termination.mismatch";

  private static LineCheck of(String impedance, String far) {
    return LineCheck.of(
        new SiteText()
            .line("cable", SiteText.cable("24 AWG", impedance))
            .unit("150 ohm", "10 m")
            .unit(far, ""));
  }

  @ParameterizedTest
  @CsvSource({
    "120 ohm, 120 ohm, ''",
    "120 ohm, 96 ohm, ''",
    "120 ohm, 95.9 ohm, warning",
    "120 ohm, 144 ohm, ''",
    "120 ohm, 144.1 ohm, warning",
    "120 ohm, 150 ohm, ''",
    "100 ohm, 150 ohm, ''",
    "100 ohm, 0.15 kohm, ''",
    "100 ohm, 121 ohm, warning",
    "100 ohm, 120 ohm + 1 nF, ''",
    "78 ohm, 120 ohm + 470 pF, ''",
    "90 ohm, 120 ohm, warning",
    "100 ohm, 150 ohm + 1 nF, warning",
    "0.1 kohm, 0.1 kohm + 1 nF, ''"
  })
  void limits(String impedance, String far, String level) {
    LineCheck check = of(impedance, far);
    assertThat(check.reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
    if (!level.isEmpty()) {
      assertThat(check.marked(RULE)).isEqualTo(far);
      assertThat(check.reportedBy(RULE))
          .singleElement()
          .asString()
          .contains("the " + far + " terminator at \"Bay 2\" is ")
          .contains("off the cable's " + impedance)
          .contains("fit " + impedance);
      assertThat(check.with("termination: " + far, "termination: " + impedance).reported())
          .isEmpty();
    }
  }

  @ParameterizedTest
  @CsvSource({"25 %, ''", "24.9 %, warning", "0 %, warning"})
  void theShareIsAParameter(String most, String level) {
    assertThat(of("80 ohm", "100 ohm").parameter(RULE, "most", most).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** Between the ends there should be none at all, and that is reported. */
  @Test
  void onlyEndsAreJudgedAndBothSidesOfARepeater() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .unit("190 ohm", "10 m")
                .unit("180 ohm", "10 m")
                .repeater("Boiler", "170 ohm", "10 m")
                .unit("160 ohm", ""));
    assertThat(check.rules()).containsExactly(RULE, "termination.mid-line", RULE, RULE, RULE);
  }
}
