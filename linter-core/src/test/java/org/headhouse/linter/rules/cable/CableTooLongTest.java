package org.headhouse.linter.rules.cable;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * 1200 m, and 10⁷ / rate: The RS-485 Design Guide, TI SLLA272. 1000 m: MODBUS over Serial Line
 * V1.02 §3.4.3. 10⁸ / rate: common practice, no source.
 */
class CableTooLongTest {
  private static final String RULE = "cable.too-long";

  /** Thick cable, so that nothing but the length is in question. */
  private static SiteText line(String baud) {
    return new SiteText().line("baud", baud).line("cable", SiteText.cable("16 AWG", "120 ohm"));
  }

  private static LineCheck of(String baud, String... hops) {
    SiteText site = line(baud);
    for (int i = 0; i < hops.length; i++) {
      site.unit(i == 0 ? "120 ohm" : "none", hops[i]);
    }
    return LineCheck.of(site.unit("120 ohm", ""));
  }

  @ParameterizedTest
  @CsvSource({
    "9600, 1000 m, ''",
    "9600, 1000.1 m, warning",
    "9600, 1200 m, warning",
    "9600, 1200.1 m, error",
    "9600, 3938 ft, error",
    "9600, 3937 ft, warning",
    "1200, 1200 m, warning",
    "19200, 520.8 m, ''",
    "19200, 520.9 m, note",
    "19200, 1001 m, warning",
    "57600, 173.6 m, ''",
    "57600, 173.7 m, note",
    "115200, 86.8 m, ''",
    "115200, 86.9 m, note",
    "115200, 868 m, note",
    "115200, 868.1 m, error",
    "115200, 1300 m, error"
  })
  void limits(String baud, String length, String level) {
    assertThat(of(baud, length).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  @ParameterizedTest
  @CsvSource({
    "9600, 1250 m, is 1250 m long; TIA/EIA-485-A allows 1200 m",
    "9600, 1100 m, Modbus allows 1000 m up to 9600 bit/s on AWG 26 or thicker: ",
    "115200, 900 m, 115200 bit/s allows at most 868 m",
    "57600, 2000 m, is 2000 m long; TIA/EIA-485-A allows 1200 m",
    "115200, 1300 m, 115200 bit/s allows at most 868 m",
    "9600, 1000.1 m, is 1000.1 m long; Modbus allows 1000 m",
    "19200, 600 m, jitter at 19200 bit/s is under 10 % up to 520 m"
  })
  void theLimitAndItsSourceAreReported(String baud, String length, String text) {
    LineCheck check = of(baud, length);
    assertThat(check.reportedBy(RULE)).singleElement().asString().contains(text);
    assertThat(check.marked(RULE)).isEqualTo(length);
  }

  /** The run that passes the limit is marked; at Bay 4 there would still be 1150 m before it. */
  @Test
  void aRepeaterWhereItIsSaidMendsIt() {
    LineCheck check = of("9600", "500 m", "400 m", "250 m", "100 m");
    assertThat(check.marked(RULE)).isEqualTo("100 m");
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("the segment from \"Head House\" to \"Bay 5\" is 1250 m long")
        .contains("fit a repeater at or before \"Bay 3\"");
    assertThat(
            LineCheck.of(
                    line("9600")
                        .unit("120 ohm", "500 m")
                        .unit("none", "400 m")
                        .repeater("Boiler", "120 ohm", "0 m")
                        .unit("none", "250 m")
                        .unit("none", "100 m")
                        .unit("120 ohm", ""))
                .reported())
        .isEmpty();
  }

  @Test
  void aFirstRunThatIsTooLongIsDivided() {
    assertThat(of("9600", "1250 m", "10 m").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("fit a repeater in the run after \"Head House\"");
  }

  /** A typing error of that kind falsifies all voltages, and is reported once. */
  @Test
  void aTypingErrorIsReportedOnce() {
    SiteText site = new SiteText().bias("Head House", "650 ohm", "5 V");
    assertThat(
            LineCheck.of(site.unit("120 ohm", "3000 m").unit("none", "30 m").unit("120 ohm", ""))
                .reported())
        .containsExactly("error " + RULE);
  }

  /** Lengths whose sum is a limit in decimals, and a hair more in binary. */
  @ParameterizedTest
  @ValueSource(
      strings = {"1000 m", "195.8 m,135 m,128.4 m,4.7 m,536.1 m", "226 m,81.1 m,211.8 m,481.1 m"})
  void aSumThatIsTheLimitIsNotOverIt(String hops) {
    assertThat(of("9600", hops.split(",", -1)).reported()).isEmpty();
  }

  @Test
  void eachSegmentIsJudgedByItself() {
    SiteText site =
        line("9600")
            .unit("120 ohm", "900 m")
            .repeater("Boiler", "120 ohm", "1100 m")
            .unit("120 ohm", "");
    LineCheck check = LineCheck.of(site);
    assertThat(check.reported()).containsExactly("warning " + RULE);
    assertThat(check.marked(RULE)).isEqualTo("1100 m");
  }

  /** What is known may be too long alone; less may be long enough with the rest. */
  @ParameterizedTest
  @CsvSource({
    "1250 m, cable.length-unknown cable.too-long, is at least 1260 m long",
    "990 m, cable.length-unknown, ''"
  })
  void aLengthThatIsNotKnown(String known, String rules, String fact) {
    LineCheck check =
        of("9600", "20 m", known, "10 m").with("cable-to-next: 20 m", "pair: straight");
    assertThat(check.rules()).containsExactly(rules.split(" "));
    assertThat(String.join("", check.reportedBy(RULE))).contains(fact);
  }

  /** Without a rate, the limits that do not depend on it hold. */
  @Test
  void withoutARate() {
    assertThat(of("9600", "1250 m").with("baud: 9600\n", "baud: fast\n").rules()).contains(RULE);
  }

  /** Without a rate the limits of the standards are left. */
  @ParameterizedTest
  @CsvSource({"1000 m, ''", "1001 m, warning", "1201 m, error"})
  void withoutARate(String length, String level) {
    List<String> reported =
        of("115200", length).with("line:\n", "lines:\n").reported().stream()
            .filter(one -> one.endsWith(RULE))
            .toList();
    assertThat(reported).isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** A limit that is only noted does not ask for a repeater where a more severe one is passed. */
  @Test
  void theRepeaterIsThatOfTheGraverLimit() {
    assertThat(of("19200", "400 m", "400 m", "300 m").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("Modbus allows 1000 m", "fit a repeater at or before \"Bay 3\"");
    assertThat(of("19200", "400 m", "400 m").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("up to 520 m", "fit a repeater at or before \"Bay 2\"");
  }
}
