package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** On which days a line was proved, and whether that is long ago: common practice, no source. */
class DaysOfRecordsTest {
  private static final String WHOLE =
      ", outdoor-readings-seen: [Bay 2], measured: {pair-resistance: 61 ohm, elsewhere: [{at: Bay 2,"
          + " pair-resistance: 61 ohm}]}}";

  private static List<String> reported(String first, String renewed, String every, String rule)
      throws IOException {
    String text =
        new SiteText()
            .unit("120 ohm", "10 m")
            .unit("120 ohm", "")
            .measured("pair-resistance: 60 ohm, elsewhere: [{at: Bay 2, pair-resistance: 60 ohm}]")
            .toString()
            .replace("2020-01-01", first)
            .replace("[Bay 2]}", "[Bay 2], renewed: [" + renewed + "]}");
    return SiteLinter.builder()
        .clock(Clock.fixed(Instant.parse("2026-11-02T10:00:00Z"), ZoneOffset.UTC))
        .policy(
            SiteInput.text(
                "linter.yaml",
                "format: 1\nrule-set: 1\nrules: {commissioning.retest-due: {parameters: {every: "
                    + every
                    + "}}}\n"))
        .build()
        .checkText("example.yaml", text)
        .results()
        .stream()
        .filter(result -> result.rule().equals(rule))
        .map(Result::message)
        .map(message -> message.fact())
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2025-11-02 | 12 months | 0",
        "2025-11-01 | 12 months | 1",
        "2025-11-01 | 1 year    | 1",
        "2025-11-01 | 2 years   | 0",
        "2026-08-04 | 90 days   | 0",
        "2026-08-03 | 90 days   | 1",
        "2026-10-18 | 2 weeks   | 1",
        "2000-01-01 | never     | 0",
        "'\"?\"'  | 1 day     | 0",
        "2027-01-01 | 1 day     | 0",
      })
  void theWholeLineIsProvedAgain(String first, String every, int results) throws IOException {
    assertThat(reported(first, "", every, "commissioning.retest-due")).hasSize(results);
  }

  /** A part that is renewed renews nothing else; all of it renews the whole. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "', outdoor-readings-seen: [Bay 2]}' | 2020-03-14",
        "WHOLE                               |",
      })
  void onlyAWholeRenewalCounts(String renewal, String day) throws IOException {
    List<String> found =
        reported(
            "2020-03-14",
            "{date: 2026-06-20, by: R.O." + renewal.replace("WHOLE", WHOLE),
            "1 year",
            "commissioning.retest-due");
    assertThat(found)
        .isEqualTo(
            day == null
                ? List.of()
                : List.of(
                    "the whole line was last proved on 2020-03-14, and was due again on 2021-03-14"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2026-03-14 | '{date: 2026-06-20, by: R.O.}' |",
        "2026-03-14 | '{date: 2026-03-14, by: R.O.}' |",
        "2026-03-14 | '{date: 2026-11-02, by: R.O.}' |",
        "2026-11-03 | '' | the record is dated 2026-11-03, in the future",
        "2026-03-14 | '{date: 2026-11-03, by: R.O.}' | the record is dated 2026-11-03, in the future",
        "2026-03-14 | '{date: 2026-03-13, by: R.O.}' | the record is renewed on 2026-03-13, before 2026-03-14, which it renews",
        "2026-03-14 | '{date: 2026-06-20, by: R.O.}, {date: 2026-05-01, by: R.O.}' | the record is renewed on 2026-05-01, before 2026-06-20, which it renews",
        "2026-03-14 | '{date: \"?\", by: \"?\"}' |",
      })
  void daysAreInOrderAndNotAhead(String first, String renewed, String fact) throws IOException {
    assertThat(reported(first, renewed, "never", "commissioning.date"))
        .isEqualTo(fact == null ? List.of() : List.of(fact));
  }
}
