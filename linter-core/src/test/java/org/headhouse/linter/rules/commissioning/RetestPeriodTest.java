package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Period;
import java.util.Optional;
import org.headhouse.linter.rule.ParameterType;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** How a stretch of the calendar is written; the right column is that of ISO 8601. */
class RetestPeriodTest {
  @ParameterizedTest
  @CsvSource({
    "12 months, P12M",
    "1 month, P1M",
    "1 year, P1Y",
    "2years, P2Y",
    "90 days, P90D",
    "2 weeks, P14D",
    "never, P0D"
  })
  void aPeriodIsANumberAndAUnit(String written, String iso) {
    assertThat(ParameterType.period().parse(written)).contains(Period.parse(iso));
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "12", "0 days", "-1 year", "1.5 years", "12 m", "99999 years", "P1Y"})
  void anythingElseIsNone(String written) {
    assertThat(ParameterType.period().parse(written)).isEqualTo(Optional.empty());
  }
}
