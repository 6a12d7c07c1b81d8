package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The last day of a calibration still counts: common practice, no source. */
class MeterExpiredTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "calibrated-until: 2020-01-01 | 0",
        "calibrated-until: 2019-12-31 | 1",
        "calibrated-until: 2030-12-31 | 0",
        "type: hand meter | 0",
        "calibrated-until: last year | 0"
      })
  void theLastDayCounts(String meter, int results) throws IOException {
    String text =
        new SiteText()
            .unit("120 ohm", "10 m")
            .unit("120 ohm", "")
            .measured("pair-resistance: 60 ohm")
            .toString()
            .replace("by: R.O.", "by: Robin Maria Oakfield-Ashdown, meter: {" + meter + "}");
    assertThat(
            SiteLinter.builder()
                .clock(Clock.fixed(Instant.parse("2026-11-02T10:00:00Z"), ZoneOffset.UTC))
                .build()
                .checkText("example.yaml", text)
                .results())
        .filteredOn(result -> result.rule().equals("commissioning.meter-expired"))
        .hasSize(results);
  }
}
