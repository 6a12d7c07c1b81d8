package org.headhouse.linter.rules.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What edges do on lines of which the bound itself is proved elsewhere. */
class SignalDisturbedTest {
  private static final String RULE = "signal.disturbed";

  private static LineCheck line(
      String baud, String cable, String end, String types, String... middle) {
    return LineCheck.of(
            new SiteText()
                .line("baud", baud)
                .line("cable", "{gauge: 24 AWG, shielded: true, impedance: 120 ohm" + cable + "}")
                .unit("120 ohm", "30 m", "device-type: box")
                .unit(
                    "none", "50 m", middle.length == 0 ? new String[] {"device-type: box"} : middle)
                .unit(end, "", "device-type: box"))
        .types("id: box, unit-load: 1/8" + types);
  }

  /** An end that hardly conducts rings for some 9 µs; the middle of a bit is 4.3, 8.7, 13 µs. */
  @ParameterizedTest
  @CsvSource({"115200, error", "57600, error", "38400, ''", "19200, ''", "9600, ''"})
  void theRateDecides(String baud, String level) {
    List<String> found = line(baud, "", "120 ohm + 100 pF", "").reported();
    assertThat(found.stream().filter(one -> one.endsWith(RULE)))
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  @Test
  void whatSettlesItIsComputed() {
    assertThat(line("115200", "", "120 ohm + 100 pF", "").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("a bit of 8.7 µs is read at its middle")
        .contains("fit a terminator of 120 ohm without a capacitor at \"Bay 3\"")
        .contains("set all units and the line to 38400 bit/s");
  }

  /** A type that lacks the lower rates. */
  @Test
  void aRateThatSomeTypeLacksIsNotProposed() {
    assertThat(
            line("115200", "", "120 ohm + 100 pF", ", baud-rates: [9600, 57600, 115200]")
                .reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("set all units and the line to 9600 bit/s");
  }

  /** 15 m are allowed, but a quick driver makes them ring into the bit; that is only warned of. */
  @Test
  void aWarningOfAStubSilencesNothing() {
    LineCheck check =
        line(
            "115200",
            "",
            "120 ohm + 100 pF",
            ", rise-time: 20 ns",
            "device-type: box",
            "stub: 15 m");
    assertThat(check.reported()).contains("warning stub.too-long", "error " + RULE);
    assertThat(check.reportedBy("stub.too-long").toString()).contains("not harmless at 115200");
  }

  @Test
  void aMissingTerminatorSaysItAlong() {
    LineCheck check = line("57600", "", "none", "");
    assertThat(check.reported()).doesNotContain("error " + RULE);
    assertThat(check.reportedBy("termination.missing-at-end").toString())
        .contains("not harmless at 57600 bit/s, settled only after")
        .contains("of a bit of 17 µs");
    assertThat(line("9600", "", "none", "").reportedBy("termination.missing-at-end").toString())
        .contains("computed: harmless at 9600 bit/s, settled after")
        .doesNotContain("not harmless")
        .contains("of a bit of 104 µs");
  }

  /** A cable that is slower, by its factor or its capacitance, rings for longer. */
  @ParameterizedTest
  @CsvSource({
    "', velocity-factor: 0.78'",
    "', velocity-factor: 0.6'",
    "', velocity-factor: 0.78, capacitance: 60 pF'",
    "', capacitance: 80 pF'"
  })
  void theSpeedOfTheCableCounts(String cable) {
    double usual = micros(line("9600", "", "none", ""));
    double settled = micros(line("9600", cable, "none", ""));
    if (cable.contains("0.78'") || cable.endsWith("0.78")) {
      assertThat(settled).isLessThan(usual);
    } else {
      assertThat(settled).isGreaterThan(usual);
    }
  }

  private static double micros(LineCheck check) {
    var edges = check.figures().segments().get(0).edges();
    assertThat(edges).isNotNull();
    return edges == null ? 0 : edges.settledSeconds();
  }

  /** Without a length, an impedance or a gauge nothing is said. */
  @Test
  void whatIsNotKnownIsNotJudged() {
    assertThat(
            LineCheck.of(
                    new SiteText()
                        .line("baud", "115200")
                        .line("cable", "{gauge: 24 AWG, shielded: true}")
                        .unit("120 ohm", "80 m")
                        .unit("120 ohm + 100 pF", ""))
                .reported())
        .doesNotContain("error " + RULE);
  }
}
