package org.headhouse.linter.rules.supervision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Objects;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * An exchange at 9600 bit/s, 11 bits a character: read 10 registers 45.833 ms, read 125 309.375 ms,
 * with two silences of 3.5 characters (MODBUS over Serial Line V1.02, 2.5.1.1; Application Protocol
 * V1.1b3, 6.3; computed). A unit takes 20 ms to answer where its type says nothing.
 */
class SupervisionTimeoutShortTest {
  private static final String RULE = "supervision.timeout-short";
  private static final String SLOW = "id: slow, processing: 300 ms, unit-load: 1/8";

  private static LineCheck check(String link, SiteText site, int registers, String timeout) {
    String text =
        site.polls(link, "every: 20 s, registers: " + registers + ", timeout: " + timeout)
            .toString();
    return LineCheck.of(text);
  }

  private static SiteText site() {
    return new SiteText().unit("120 ohm", "10 m").unit("none", "10 m").unit("120 ohm", "");
  }

  @ParameterizedTest
  @CsvSource({
    "serial, 10, 66 ms, ''", // 45.833 + 20
    "serial, 10, 65.9 ms, ''",
    "serial, 10, 65.8 ms, error",
    "serial, 10, 10 ms, error",
    "serial, 125, 329.4 ms, ''", // 309.375 + 20
    "serial, 125, 329.3 ms, error",
    // The longest of several requests.
    "serial, 300, 329.4 ms, ''",
    "serial, 300, 329.3 ms, error",
    // The head unit sends nothing of its own.
    "through-head, 10, 65.9 ms, ''",
    "through-head, 10, 65.8 ms, error",
  })
  void levels(String link, int registers, String timeout, String level) {
    LineCheck check = check(link, site(), registers, timeout);
    assertThat(check.reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  @Test
  void overEthernetThereIsNoLineToWaitFor() {
    SiteText site =
        new SiteText()
            .unit("120 ohm", "10 m", "device-type: box", "network: {ip: 10.0.0.1/24}")
            .unit("120 ohm", "", "device-type: box", "network: {ip: 10.0.0.2/24}");
    LineCheck check = check("ethernet", site, 125, "10 ms").types("id: box, ethernet: true");
    assertThat(check.rules()).isEmpty();
  }

  /** What a converter adds, and what the head unit ends first: a broadcast of 128.073 ms. */
  @ParameterizedTest
  @CsvSource({
    "serial, 81.9 ms, ''", // 45.833 + 20 + 16
    "serial, 81.8 ms, converter 16 ms",
    "through-head, 194 ms, ''", // 45.833 + 20 + 128.073
    "through-head, 193.9 ms, another transaction of the head unit 128 ms",
  })
  void converterAndHeadUnit(String link, String timeout, String part) {
    SiteText site =
        new SiteText()
            .broadcast(6, "5 s")
            .unit("120 ohm", "10 m")
            .converter("Office", "16 ms", "10 m")
            .unit("120 ohm", "");
    LineCheck check = check(link, site, 10, timeout);
    if (part.isEmpty()) {
      assertThat(check.rules()).isEmpty();
    } else {
      assertThat(check.reportedBy(RULE)).singleElement().asString().contains(part + ")");
    }
  }

  /** The slowest unit counts, one that is no zone does not. */
  @Test
  void theSlowestZone() {
    SiteText site =
        new SiteText()
            .unit("120 ohm", "10 m")
            .unit("none", "10 m", "device-type: slow")
            .unit("120 ohm", "");
    LineCheck check = check("serial", site, 10, "345 ms").types(SLOW);
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("the timeout of 345 ms is shorter than the 346 ms", "processing 300 ms");
    assertThat(check.with("Bay 2, Bay 3]", "Bay 3]").rules())
        .containsExactly("supervision.zone-missing");
  }

  /** Equipment that supervision asks counts with its own registers; what the head unit asks not. */
  @ParameterizedTest
  @CsvSource({
    "by: supervision, 125, 329.3 ms, request and answer 301 ms",
    "by: supervision, 125, 330 ms, ''",
    "by: head, 125, 100 ms, ''",
    "by: supervision, 1, 65.8 ms, request and answer 38 ms",
  })
  void equipment(String by, int registers, String timeout, String part) {
    SiteText site =
        new SiteText()
            .unit("120 ohm", "10 m")
            .equipment("Dosing Rig", by + ", registers: " + registers + ", every: 1 min", "10 m")
            .unit("120 ohm", "");
    LineCheck check = check("serial", site, 10, timeout);
    if (part.isEmpty()) {
      assertThat(check.rules()).isEmpty();
    } else {
      assertThat(check.reportedBy(RULE)).singleElement().asString().contains(part);
    }
  }

  /** At 1200 bit/s 125 registers take 2.475 s; the usual timeout is 1 s. */
  @Test
  void theUsualTimeoutIsJudgedWhereNoneIsWritten() {
    String text =
        new SiteText()
            .line("baud", "1200")
            .unit("120 ohm", "10 m")
            .unit("120 ohm", "")
            .polls("serial", "every: 20 s, registers: 125")
            .toString();
    assertThat(LineCheck.of(text).reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("the usual timeout of 1 s is shorter than the 2.5 s", "timeout: 2.5 s or longer");
    assertThat(LineCheck.of(text.replace("registers: 125", "registers: 40")).rules()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"10, 50 ms, 70 ms", "125, 300 ms, 330 ms"})
  void theTimeoutThatIsOfferedDoes(int registers, String timeout, String offered) {
    LineCheck check = check("serial", site(), registers, timeout);
    Fix fix = Objects.requireNonNull(check.results().get(0).fix());
    assertThat(fix.kind()).isEqualTo(FixKind.PROPOSED);
    assertThat(fix.description()).isEqualTo("Set timeout: " + offered);
    assertThat(check.with("timeout: " + timeout, "timeout: " + offered).rules()).isEmpty();
  }

  /** What is shown is over what is written. */
  @Test
  void closeToTheLimitMoreDigitsAreShown() {
    assertThat(check("serial", site(), 10, "65.8 ms").reportedBy(RULE).get(0))
        .contains("the timeout of 65.8 ms is shorter than the 66 ms");
    assertThat(check("serial", site(), 125, "329.3 ms").reportedBy(RULE).get(0))
        .contains("the timeout of 329.3 ms is shorter than the 329.4 ms");
  }
}
