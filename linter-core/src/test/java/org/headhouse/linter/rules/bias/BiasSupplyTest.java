package org.headhouse.linter.rules.bias;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Receivers bear -7 to +12 V against common (TI SLLA272, Analog Devices AN-960). With nothing
 * across the pair but terminators of 60 ohm and bias of 650 ohm, D1 is at 710/1360 of the supply,
 * less what the loads take (computed): 12 V from 23 V on.
 */
class BiasSupplyTest {
  private static final String RULE = "bias.supply";

  private static LineCheck check(String supply) {
    return LineCheck.of(
            new SiteText()
                .bias("Head House", "650 ohm", supply)
                .unit("120 ohm", "0 m", "device-type: box")
                .unit("120 ohm", "", "device-type: box"))
        .types("id: box, unit-load: 1/256");
  }

  @ParameterizedTest
  @CsvSource({
    "5 V, '', ''",
    "5.5 V, '', ''",
    "5.51 V, warning, 'is 5.51 V, over the 5.5 V maximum of line drivers:'",
    "12 V, warning, 'is 12 V, over the 5.5 V maximum of line drivers:'",
    "21 V, warning, 'over the 5.5 V maximum of line drivers:'",
    // Within what receivers bear as written, not at the upper end of 5 %.
    "22 V, warning, 'at the upper end of its tolerance D1 of the idle line reaches 12.1 V:'",
    "22.9 V, warning, 'at the upper end of its tolerance D1 of the idle line reaches 12.5 V:'",
    "23 V, error, 'D1 of the idle line is computed at 12.002 V:'",
    "24 V, error, 'D1 of the idle line is computed at 12.5 V:'",
  })
  void levels(String supply, String level, String fact) {
    LineCheck check = check(supply);
    // With 5 V these resistors hold too little.
    assertThat(check.reported().stream().filter(one -> one.endsWith(RULE)).toList())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
    if (!level.isEmpty()) {
      assertThat(check.reportedBy(RULE).get(0)).contains(fact);
      assertThat(check.marked(RULE)).isEqualTo(supply);
    }
  }
}
