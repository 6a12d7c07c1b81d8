package org.headhouse.linter.rules.traffic;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Times: MODBUS over Serial Line V1.02 §2.4.1 and §2.5.1, Application Protocol V1.1b3. 70 %: common
 * practice, no source.
 */
class TrafficRulesTest {
  private static final String BUSY = "traffic.busy";
  private static final String OVERRUN = "traffic.overrun";

  private static SiteText site(String baud, int registers, String every) {
    return new SiteText()
        .line("baud", baud)
        .broadcast(registers, every)
        .unit("120 ohm", "10 m", "device-type: box")
        .unit("none", "10 m", "device-type: box")
        .unit("120 ohm", "", "device-type: box");
  }

  private static LineCheck check(SiteText site, String rates) {
    return LineCheck.of(site)
        .types("id: box, unit-load: 1/8" + (rates.isEmpty() ? "" : ", baud-rates: " + rates));
  }

  /** A broadcast of 6 registers at 9600 takes 128.073 ms (computed). */
  @ParameterizedTest
  @CsvSource({
    "183 ms, ''", // 69.98 %
    "182.9 ms, warning traffic.busy", // 70.02 %
    "128.1 ms, warning traffic.busy",
    "128 ms, error traffic.overrun",
    "1 ms, error traffic.overrun"
  })
  void levels(String every, String reported) {
    assertThat(check(site("9600", 6, every), "").reported())
        .isEqualTo(reported.isEmpty() ? List.of() : List.of(reported));
  }

  @ParameterizedTest
  @CsvSource({
    "160 ms, traffic.busy, 'the line is in use 80 % of the time; at most 70 % is allowed'",
    "100 ms, traffic.overrun, the traffic needs 128 % of the available time"
  })
  void theShareIsReported(String every, String rule, String text) {
    LineCheck check = check(site("9600", 6, every), "");
    assertThat(check.reportedBy(rule)).singleElement().asString().contains(text);
    assertThat(check.marked(rule)).isEqualTo(every);
  }

  private static final Pattern PERIOD =
      Pattern.compile("to every: ([0-9.]+ m?s) for the (broadcast|polls)");
  private static final Pattern BAUD = Pattern.compile("line to ([0-9]+) bit/s");

  /** Period of the broadcast, its registers, period of the polls, their registers. */
  @ParameterizedTest
  @CsvSource({
    "9600, 100 ms, 6, 20 s, 60, broadcast",
    "9600, 160 ms, 6, 20 s, 60, broadcast",
    "9600, 400 ms, 123, 10 s, 1, broadcast",
    "9600, 5 s, 12, 1 s, 125, polls",
    "9600, 5 s, 12, 1.2 s, 125, polls",
    "9600, 5 s, 12, 500 ms, 60, polls",
    "1200, 700 ms, 12, 20 s, 60, broadcast",
    "19200, 250 ms, 12, 800 ms, 200, polls"
  })
  void thePeriodAndTheRateThatAreOfferedMendIt(
      String baud, String every, int registers, String pollEvery, int pollRegisters, String part) {
    LineCheck check =
        check(
            site(baud, registers, every)
                .polls(
                    "serial",
                    "every: " + pollEvery + ", registers: " + pollRegisters + ", timeout: 2 s"),
            "");
    assertThat(check.rules()).hasSize(1).allMatch(rule -> rule.startsWith("traffic."));
    String rule = check.rules().get(0);
    String reported = check.reportedBy(rule).get(0);
    Matcher period = PERIOD.matcher(reported);
    assertThat(period.find()).as(reported).isTrue();
    assertThat(period.group(2)).isEqualTo(part);
    String old = "every: " + (part.equals("polls") ? pollEvery : every);
    assertThat(check.marked(rule)).isEqualTo(old.replace("every: ", ""));
    assertThat(check.with(old, "every: " + period.group(1)).rules())
        .as(reported)
        .doesNotContain(rule);
    Matcher rate = BAUD.matcher(reported);
    if (rate.find()) {
      assertThat(check.with("baud: " + baud, "baud: " + rate.group(1)).rules())
          .as(reported)
          .doesNotContain(rule);
    }
  }

  /** At 70 % of 1.25 s the frame of 123 registers fits from 19 200 bit/s on (computed). */
  @ParameterizedTest
  @CsvSource({
    "'', 19200",
    "'[9600, 19200]', 19200",
    "'[9600, 38400]', 38400",
    "'[9600, 57600, 115200]', 57600",
    "'[9600]', ''"
  })
  void theRateThatIsOfferedIsOneThatAllTypesHave(String rates, String offered) {
    String reported = check(site("9600", 123, "450 ms"), rates).reportedBy(BUSY).get(0);
    if (offered.isEmpty()) {
      assertThat(reported).doesNotContain("bit/s");
    } else {
      assertThat(reported).contains("or set all units and the line to " + offered + " bit/s");
    }
  }

  /** 10⁸ / 115 200 = 868 m: a remedy that breaks another rule is none. */
  @Test
  void aRateThatTheCableIsTooLongForIsNotOffered() {
    SiteText site =
        new SiteText()
            .line("baud", "57600")
            .line("cable", SiteText.cable("16 AWG", "120 ohm"))
            .broadcast(123, "200 ms")
            .unit("120 ohm", "900 m")
            .unit("120 ohm", "");
    LineCheck check = LineCheck.of(site);
    assertThat(check.reportedBy(BUSY)).singleElement().asString().doesNotContain("115200");
    LineCheck shorter = check.with("900 m", "800 m");
    assertThat(shorter.reportedBy(BUSY)).singleElement().asString().contains("115200 bit/s");
  }

  @ParameterizedTest
  @CsvSource({
    "most, 81 %, ''",
    "most, 79 %, warning traffic.busy",
    "most, 30 %, warning traffic.busy",
    "most, 1 %, warning traffic.busy",
    "most, 100 %, ''",
    "turnaround, 50 ms, ''",
    "turnaround, 150 ms, error traffic.overrun",
    "processing, 1 ms, warning traffic.busy"
  })
  void parameters(String name, String value, String reported) {
    // 128.073 ms every 160 ms are 80.05 %.
    LineCheck check = check(site("9600", 6, "160 ms"), "").parameter(BUSY, name, value);
    assertThat(check.reported()).isEqualTo(reported.isEmpty() ? List.of() : List.of(reported));
  }

  /** Three polls of 180.417 ms each second are 54 %; with 90 ms more for each, 81 %. */
  @ParameterizedTest
  @CsvSource({"20 ms, ''", "110 ms, warning traffic.busy", "300 ms, error traffic.overrun"})
  void processing(String value, String reported) {
    LineCheck check =
        check(site("9600", 12, "5 s").polls("serial", "every: 1 s, registers: 60"), "")
            .parameter(BUSY, "processing", value);
    assertThat(check.reported()).isEqualTo(reported.isEmpty() ? List.of() : List.of(reported));
  }

  @Test
  void pollsOverEthernetDoNotCount() {
    LineCheck check =
        check(site("9600", 12, "5 s").polls("ethernet", "every: 1 s, registers: 1000"), "");
    assertThat(check.rules()).doesNotContain(BUSY, OVERRUN);
    assertThat(check.with("link: ethernet", "link: serial").rules()).containsExactly(OVERRUN);
  }

  @ParameterizedTest
  @CsvSource({
    "every: 100 ms, every: 0 s",
    "every: 100 ms, every: 100",
    "registers: 6, registers: 0",
    "baud: 9600, baud: 9601",
    "parity: even, parity: some"
  })
  void staysSilent(String text, String other) {
    LineCheck check = check(site("9600", 6, "100 ms"), "");
    assertThat(check.rules()).containsExactly(OVERRUN);
    assertThat(check.with(text, other).rules()).doesNotContain(OVERRUN, BUSY);
  }

  /** A poll of 125 registers takes 329.375 ms; every 400 ms that is 82 % of the time. */
  @Test
  void equipmentThatIsAskedTooOftenIsAskedLessOften() {
    SiteText site =
        new SiteText()
            .broadcast(6, "5 s")
            .unit("120 ohm", "10 m")
            .equipment("Meter", "by: head, registers: 4, every: 1 min", "10 m")
            .equipment("Dosing Rig", "by: head, registers: 125, every: 400 ms", "10 m")
            .unit("120 ohm", "");
    LineCheck check = LineCheck.of(site);
    assertThat(check.reported()).containsExactly("warning " + BUSY);
    assertThat(check.marked(BUSY)).isEqualTo("400 ms");
    assertThat(check.reportedBy(BUSY).get(0)).contains("for the polls of \"Dosing Rig\"");
    Matcher period = PERIOD.matcher(check.reportedBy(BUSY).get(0));
    assertThat(period.find()).isTrue();
    assertThat(check.with("every: 400 ms", "every: " + period.group(1)).reported()).isEmpty();
  }

  /** Broadcast and polls each take nearly all of the time: no period does, but a rate. */
  @Test
  void whereNoPeriodDoesTheRateIsOffered() {
    LineCheck check =
        check(site("9600", 123, "450 ms").polls("serial", "every: 1.2 s, registers: 125"), "");
    Result result =
        check.results().stream()
            .filter(one -> one.rule().equals(OVERRUN))
            .findFirst()
            .orElseThrow();
    Matcher rate = BAUD.matcher(result.message().remedy());
    assertThat(result.message().remedy()).doesNotContain("every: ");
    assertThat(rate.find()).isTrue();
    Fix fix = result.fix();
    assertThat(fix).isNotNull();
    assertThat(check.with("baud: 9600", "baud: " + rate.group(1)).rules())
        .doesNotContain(OVERRUN, BUSY);
  }
}
