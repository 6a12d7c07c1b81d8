package org.headhouse.linter.rules.cable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 24 AWG is always sufficient: MODBUS over Serial Line V1.02 §3.6. It is 0.205 mm2 (ASTM B258 as
 * NBS Handbook 100 reports it), and the trade sells it as 0.2 mm2 (common practice, no source).
 */
class CableTooThinTest {

  @ParameterizedTest
  @CsvSource({
    "22 AWG, false",
    "24 AWG, false",
    "25 AWG, true",
    "0.5 mm2, false",
    "0.2 mm2, false",
    "0.19 mm2, true",
    "0.14 mm2, true",
  })
  void thinnerThanTheStandard(String gauge, boolean thin) {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .line("cable", SiteText.cable(gauge, "120 ohm"))
                .unit("120 ohm", "10 m")
                .unit("120 ohm", ""));
    assertThat(check.reported()).isEqualTo(thin ? List.of("warning cable.too-thin") : List.of());
  }
}
