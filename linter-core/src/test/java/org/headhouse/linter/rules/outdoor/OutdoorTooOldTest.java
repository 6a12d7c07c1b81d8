package org.headhouse.linter.rules.outdoor;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Replacement;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The sums are computed from the times of MODBUS over Serial Line V1.02. */
class OutdoorTooOldTest {
  private static final String RULE = "outdoor.too-old";

  private static LineCheck of(String baud, String age, int registers, String every, String polls) {
    SiteText site =
        new SiteText()
            .line("baud", baud)
            .maximumAge(age)
            .broadcast(registers, every)
            .unit("120 ohm", "10 m")
            .unit("none", "10 m")
            .unit("120 ohm", "");
    return LineCheck.of(polls.isEmpty() ? site : site.polls("serial", polls));
  }

  /** Of two periods: with polls 10.218 s, and 12.056 s with one unit silent (computed). */
  @ParameterizedTest
  @CsvSource({"12.06 s, ''", "12.05 s, warning", "10.22 s, warning", "10.21 s, error", "1 min, ''"})
  void levels(String age, String level) {
    LineCheck check = of("9600", age, 12, "5 s", "every: 20 s, registers: 60");
    assertThat(check.reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  @ParameterizedTest
  @CsvSource({
    "10 s, a reading can be 10.2 s old, 180 ms for another transaction + 38 ms for",
    "11 s, with one unit silent a reading can be 12.1 s old, 2.0 s of waiting for the silent"
  })
  void theAgeIsReportedWithItsParts(String age, String text, String parts) {
    LineCheck check = of("9600", age, 12, "5 s", "every: 20 s, registers: 60");
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(text + "; the site allows " + age)
        .contains("10.0 s until the broadcast after a lost one + " + parts);
    assertThat(check.marked(RULE)).isEqualTo(age);
  }

  @ParameterizedTest
  @CsvSource({"10.04 s, ''", "10.03 s, error"})
  void withoutPollsNoUnitIsWaitedFor(String age, String level) {
    assertThat(of("9600", age, 12, "5 s", "").reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** As many periods as broadcasts are lost, and one more. */
  @ParameterizedTest
  @CsvSource({
    "0, 5.22 s, ''",
    "0, 5.21 s, error",
    "1, 10.22 s, ''",
    "2, 15.22 s, ''",
    "2, 15.21 s, error",
    "12, 65.22 s, ''",
    "12, 65.21 s, error"
  })
  void theLostBroadcastsAreCounted(String lost, String age, String level) {
    LineCheck check =
        of("9600", age, 12, "5 s", "every: 20 s, registers: 60, timeout: 100 ms, retries: 0")
            .parameter(RULE, "lost", lost);
    // Software that waits no longer than this is another mistake.
    assertThat(check.reported().stream().filter(one -> one.endsWith(RULE)))
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  private static final Pattern PERIOD = Pattern.compile("to every: ([0-9.]+ m?s) for the");
  private static final Pattern BAUD = Pattern.compile("line to ([0-9]+) bit/s");

  /** What is offered makes the readings young enough, and breaks no other rule by an error. */
  @ParameterizedTest
  @CsvSource({
    "9600, 4 s, 12, 5 s, ''",
    "9600, 500 ms, 12, 5 s, ''",
    "9600, 4 s, 12, 5 s, 'every: 20 s, registers: 60'",
    "9600, 6 s, 12, 5 s, 'every: 20 s, registers: 60'",
    "9600, 3 s, 12, 5 s, 'every: 20 s, registers: 60'",
    "9600, 1.69 s, 123, 1.69 s, 'every: 3 s, registers: 123, timeout: 500 ms, retries: 0'",
    "1200, 4.2 s, 12, 5 s, 'every: 20 s, registers: 10, timeout: 500 ms'",
    "1200, 2.4 s, 60, 5 s, ''",
    "9600, 1.4 s, 370, 2.5 s, ''"
  })
  void whatIsOfferedMendsIt(String baud, String age, int registers, String every, String polls) {
    LineCheck check = of(baud, age, registers, every, polls);
    assertThat(check.rules()).contains(RULE);
    String reported = check.reportedBy(RULE).get(0);
    Matcher period = PERIOD.matcher(reported);
    Matcher rate = BAUD.matcher(reported);
    boolean byPeriod = period.find();
    boolean byRate = rate.find();
    assertThat(byPeriod || byRate).as(reported).isTrue();
    String broadcast = "{registers: " + registers + ", every: ";
    LineCheck mended =
        check
            .with(broadcast + every, broadcast + (byPeriod ? period.group(1) : every))
            .with("baud: " + baud, "baud: " + (byRate ? rate.group(1) : baud));
    assertThat(mended.reported())
        .as(reported)
        .noneMatch(one -> one.endsWith(RULE) || one.startsWith("error"));
  }

  /** The wait for a silent unit alone is longer than the age. */
  @Test
  void whereNeitherPeriodNorRateDoesTheWaitIsToChange() {
    LineCheck check = of("9600", "2.05 s", 12, "900 ms", "every: 20 s, registers: 60");
    assertThat(check.reported()).containsExactly("warning " + RULE);
    assertThat(check.reportedBy(RULE).get(0))
        .contains("shorten the timeout of the polls, or allow fewer retries");
    assertThat(check.with("registers: 60", "registers: 60, timeout: 200 ms, retries: 0").reported())
        .isEmpty();
  }

  /** 370 registers are four frames: not even the highest rate sends them in 0.4 s. */
  @Test
  void whereNothingDoesThereIsTooMuchToSend() {
    assertThat(of("9600", "400 ms", 370, "2 s", "").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("send fewer registers, or agree on a longer maximum-age");
  }

  /** The polls are to blame; an error that a period ends is offered one all the same. */
  @Test
  void whereOnlyTheSilentUnitCannotBeMendedTheErrorStillIs() {
    LineCheck check = of("9600", "1.9 s", 12, "5 s", "every: 20 s, registers: 60");
    assertThat(check.reported()).containsExactly("error " + RULE);
    Matcher period = PERIOD.matcher(check.reportedBy(RULE).get(0));
    assertThat(period.find()).isTrue();
    assertThat(check.with("every: 5 s", "every: " + period.group(1)).reported())
        .containsExactly("warning " + RULE);
  }

  @ParameterizedTest
  @CsvSource({
    "maximum-age: 4 s, maximum-age: soon",
    "', maximum-age: 4 s', ''",
    "every: 5 s, every: 0 s",
    "baud: 9600, baud: fast",
    // The overrun is reported; no age can be reported of traffic that cannot be.
    "every: 5 s, every: 100 ms"
  })
  void staysSilent(String text, String other) {
    LineCheck check = of("9600", "4 s", 12, "5 s", "");
    assertThat(check.rules()).containsExactly(RULE);
    assertThat(check.with(text, other).rules()).doesNotContain(RULE);
  }

  @ParameterizedTest
  @CsvSource({"turnaround, 9 s, ''", "processing, 1 s, error", "processing, 20 ms, ''"})
  void timesOfThePolicy(String name, String value, String level) {
    LineCheck check =
        of("9600", "14 s", 12, "5 s", "every: 1 min, registers: 1000, timeout: 1 s, retries: 0")
            .parameter("traffic.busy", name, value);
    assertThat(check.reported().stream().filter(one -> one.endsWith(RULE)))
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** The polls take 85 % of the time: a longer or shorter period does not do, a rate does. */
  @Test
  void whereNoPeriodDoesARateIsOffered() {
    LineCheck check =
        of(
            "9600",
            "2.3 s",
            12,
            "1 s",
            "every: 1157 ms, registers: 125, timeout: 100 ms, retries: 0");
    Result result =
        check.results().stream().filter(one -> one.rule().equals(RULE)).findFirst().orElseThrow();
    assertThat(result.message().remedy()).isEqualTo("set all units and the line to 19200 bit/s");
    Fix fix = requireNonNull(result.fix());
    assertThat(fix.description()).isEqualTo("Set all units and the line to 19200 bit/s");
    assertThat(fix.replacements()).extracting(Replacement::text).containsExactly("19200");
    assertThat(check.with("baud: 9600", "baud: 19200").rules()).doesNotContain(RULE);
  }

  /** Traffic that cannot be has no age, however small the age that is allowed. */
  @Test
  void anOverrunHasNoAge() {
    assertThat(of("9600", "50 ms", 12, "100 ms", "").rules()).containsExactly("traffic.overrun");
  }
}
