package org.headhouse.linter.rules.bias;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 450 to 650 ohm at one place: MODBUS over Serial Line V1.02 §3.4.6. 200 mV: The RS-485 Design
 * Guide, TI SLLA272. The margin of 20 mV: common practice, no source.
 */
class BiasRulesTest {
  private static final String WEAK = "bias.weak";
  private static final String OUT = "bias.out-of-range";

  /**
   * Two units whose loads cannot be reported from none, so that V = Vs / (1 + R_B / 30) with 120
   * ohm.
   */
  private static LineCheck of(String resistors, String supply, String load) {
    return LineCheck.of(
            new SiteText()
                .bias("Head House", resistors, supply)
                .unit("120 ohm", "0 m", "device-type: box")
                .unit("120 ohm", "", "device-type: box"))
        .types("id: box, unit-load: " + load);
  }

  /**
   * Computed: 620 ohm, no cable and no load; the supply of 200 mV is 4.3333 V. At the worst corner
   * 0.95 · Vs / (1 + 1.05 · 620 / (0.95 · 30)) = 0.95 · Vs / 23.842, so it is 5.0193 V.
   */
  @ParameterizedTest
  @CsvSource({"5.02 V, ''", "5.01 V, warning", "4.34 V, warning", "4.33 V, error", "1 V, error"})
  void weak(String supply, String level) {
    assertThat(of("620 ohm", supply, "0.000001").reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + WEAK));
  }

  /** 196.4 mV (computed), 20 · log10(0.1964 / 0.2) = −0.2 dB. */
  @Test
  void theVoltageAndItsMarginAreReported() {
    LineCheck check = of("650 ohm", "4.75 V", "14");
    assertThat(check.reportedBy(WEAK))
        .singleElement()
        .asString()
        .contains("is 196 mV (computed), -0.2 dB against a receiver's 200 mV");
    assertThat(check.marked(WEAK)).isEqualTo("650 ohm");
  }

  @Test
  void theUnitWithTheLowestVoltageIsNamed() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .bias("Head House", "650 ohm", "5 V")
                .unit("120 ohm", "300 m")
                .unit("none", "300 m")
                .unit("120 ohm", ""));
    assertThat(check.reportedBy(WEAK)).singleElement().asString().contains("at \"Bay 3\"");
  }

  @ParameterizedTest
  @CsvSource({"0 mV, ''", "11 mV, ''", "12 mV, warning", "0.2 V, warning"})
  void theMarginIsAParameter(String margin, String level) {
    // 0.95 · 5.3 V / 23.842 is 211.2 mV (computed).
    assertThat(of("620 ohm", "5.3 V", "0.000001").parameter(WEAK, "margin", margin).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + WEAK));
  }

  /** Computed as above: one per cent less of one part is enough for 5.01 V; there is no cable. */
  @ParameterizedTest
  @CsvSource({"resistors, ''", "supply, ''", "terminators, ''", "cable, warning"})
  void theTolerancesAreParameters(String name, String level) {
    String percent = name.equals("cable") ? "0 %" : "4 %";
    assertThat(of("620 ohm", "5.01 V", "0.000001").parameter(WEAK, name, percent).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + WEAK));
  }

  @Test
  void anEntryMayStateItsOwnTolerance() {
    LineCheck check = of("620 ohm", "5.01 V", "0.000001");
    assertThat(check.with("5.01 V}", "5.01 V, tolerance: 1 %}").reported()).isEmpty();
    assertThat(check.with("5.01 V}", "5.01 V, tolerance: 10 %}").rules()).containsExactly(WEAK);
    assertThat(check.with("5.01 V}", "5.01 V, tolerance: 100 %}").rules())
        .containsExactly("schema.bad-quantity");
  }

  /** A repeater, equipment and a converter receive as well. */
  @Test
  void theLowestMayBeThatOfARepeater() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .bias("Head House", "510 ohm", "5 V")
                .unit("120 ohm", "10 m")
                .unit("none", "400 m")
                .repeater("Boiler", "120 ohm", "10 m")
                .unit("120 ohm", ""));
    assertThat(check.reportedBy(WEAK)).singleElement().asString().contains("at \"Boiler\"");
  }

  private static final Pattern RESISTORS = Pattern.compile("set resistors: ([0-9.]+ k?ohm)");

  /** The value that is offered has to do, for several cables, loads and supplies. */
  @ParameterizedTest
  @CsvSource({
    "650 ohm, 4.75 V, 1/8, 30 m, 120 ohm",
    "650 ohm, 4.75 V, 4, 0 m, 120 ohm",
    "650 ohm, 5.5 V, 1, 150 m, 120 ohm",
    "1.2 kohm, 5 V, 1, 30 m, 120 ohm",
    "640 ohm, 4.6 V, 1/8, 100 m, 120 ohm",
    "650 ohm, 3.3 V, 1/8, 30 m, 150 ohm",
    "2 kohm, 5 V, 16, 300 m, 150 ohm"
  })
  void theResistorsThatAreOfferedMendIt(
      String resistors, String supply, String load, String cable, String terminators) {
    LineCheck check =
        LineCheck.of(
                new SiteText()
                    .line("cable", SiteText.cable("24 AWG", terminators))
                    .bias("Head House", resistors, supply)
                    .unit(terminators, cable, "device-type: box")
                    .unit(terminators, "", "device-type: box"))
            .types("id: box, unit-load: " + load);
    List<String> reported = check.reportedBy(WEAK);
    assertThat(check.rules()).containsExactly(WEAK);
    Matcher offered = RESISTORS.matcher(reported.get(0));
    assertThat(offered.find()).as(reported.get(0)).isTrue();
    assertThat(check.with("resistors: " + resistors, "resistors: " + offered.group(1)).reported())
        .isEmpty();
  }

  /** 450 ohm at 3.3 V give 3.3 / 16 = 206 mV (computed): no value of the range has the margin. */
  @Test
  void whereNoResistorDoesTheTerminatorsAreToChange() {
    LineCheck check = of("650 ohm", "3.3 V", "1/8");
    assertThat(check.reportedBy(WEAK))
        .singleElement()
        .asString()
        .contains("120 ohm + 1 nF", "no resistors of 450 to 650 ohm are enough here");
    assertThat(check.with("termination: 120 ohm", "termination: 120 ohm + 1 nF").reported())
        .isEmpty();
  }

  @ParameterizedTest
  @CsvSource({
    "450 ohm, ''",
    "449.9 ohm, fit 470 ohm",
    "0.65 kohm, ''",
    "650.1 ohm, fit 620 ohm",
    "100 ohm, fit 470 ohm"
  })
  void range(String resistors, String remedy) {
    LineCheck check = of(resistors, "5.5 V", "1/8");
    assertThat(check.reported())
        .isEqualTo(remedy.isEmpty() ? List.of() : List.of("warning " + OUT));
    if (!remedy.isEmpty()) {
      assertThat(check.reportedBy(OUT)).singleElement().asString().contains(resistors, remedy);
      assertThat(check.marked(OUT)).isEqualTo(resistors);
      assertThat(check.with(resistors, remedy.replace("fit ", "")).reported()).isEmpty();
    }
  }

  /** 1000 ohm at 5 V give 145 mV (computed): the more severe fault is reported, and once. */
  @ParameterizedTest
  @CsvSource({"1 kohm, 5 V", "700 ohm, 4 V", "100 ohm, 0.5 V"})
  void resistorsThatAreOutOfRangeAndTooWeakAreReportedOnce(String resistors, String supply) {
    assertThat(of(resistors, supply, "1/8").reported()).containsExactly("error " + WEAK);
  }

  /** Where the voltage is not known, the range is all that can be reported. */
  @Test
  void withoutLengthsTheRangeIsReported() {
    assertThat(of("1 kohm", "5 V", "1/8").with("    cable-to-next: 0 m\n", "").rules())
        .containsExactly(OUT, "cable.length-unknown");
  }

  @Test
  void severalPlaces() {
    SiteText site =
        new SiteText()
            .line(
                "bias",
                "[{at: Boiler, resistors: 560 ohm, supply: 5 V},"
                    + " {at: Head House, resistors: 560 ohm, supply: 5 V},"
                    + " {at: Bay 2, resistors: 1 kohm, supply: 1 V},"
                    + " {at: Bay 3, resistors: 560 ohm, supply: 5 V}]")
            .unit("120 ohm", "10 m")
            .unit("none", "10 m")
            .repeater("Boiler", "120 ohm", "10 m")
            .unit("120 ohm", "");
    LineCheck check = LineCheck.of(site);
    assertThat(check.reportedBy("bias.several"))
        .hasSize(2)
        .satisfiesExactly(
            near -> assertThat(near).contains("\"Bay 2\" is a second bias point"),
            far -> assertThat(far).contains("\"Bay 3\" is a second bias point"));
    assertThat(check.rules()).doesNotContain(WEAK);
    LineCheck mended =
        check
            .with(", {at: Bay 2, resistors: 1 kohm, supply: 1 V}", "")
            .with(", {at: Bay 3, resistors: 560 ohm, supply: 5 V}", "");
    assertThat(mended.reported()).isEmpty();
  }

  /** A third terminator is one mistake, whatever it does to the voltages. */
  @Test
  void aThirdTerminatorIsReportedOnce() {
    LineCheck check =
        LineCheck.of(
                new SiteText()
                    .bias("Head House", "650 ohm", "5 V")
                    .unit("120 ohm", "10 m", "device-type: box")
                    .unit("120 ohm", "10 m", "device-type: box")
                    .unit("120 ohm", "", "device-type: box"))
            .types("id: box, unit-load: 1/8");
    assertThat(check.reported()).containsExactly("error termination.mid-line");
  }

  /** Everything that the voltage needs: without it there is none to judge. */
  @ParameterizedTest
  @CsvSource({
    "resistors: 650 ohm, resistors: strong",
    "'supply: 4.75 V', 'supply: 0 V'",
    "gauge: 24 AWG, gauge: thin",
    "termination: 120 ohm, termination: yes",
    "cable-to-next: 0 m, cable-to-next: far"
  })
  void staysSilentWithoutWhatItNeeds(String text, String other) {
    LineCheck check = of("650 ohm", "4.75 V", "14");
    assertThat(check.rules()).contains(WEAK);
    assertThat(check.with(text, other).rules()).doesNotContain(WEAK);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "449 ohm | 5.5 V | under Modbus's 450 to 650 ohm | they take current that the drivers need | isolate the supply, fit 470 ohm, and set resistors: 470 ohm",
        "651 ohm | 5.5 V | over Modbus's 450 to 650 ohm  | the least sensitive receivers see no clear idle level | isolate the supply, fit 620 ohm, and set resistors: 620 ohm",
        // 470 ohm at 3.6 V give 187 mV at the worst corner, 450 ohm 195 mV (computed).
        "440 ohm | 3.6 V | under Modbus's 450 to 650 ohm | they take current that the drivers need | isolate the supply, and fit 470 ohm each and terminators with a capacitor, such as 120 ohm + 1 nF",
      })
  void outOfRangeIsReportedWithItsReason(
      String resistors, String supply, String fact, String reason, String remedy) {
    Result result =
        of(resistors, supply, "1/8").results().stream()
            .filter(one -> one.rule().equals(OUT))
            .findFirst()
            .orElseThrow();
    assertThat(result.message().fact()).contains(fact);
    assertThat(result.message().reason()).isEqualTo(reason);
    assertThat(result.message().remedy()).isEqualTo(remedy);
    assertThat(result.fix() == null).isEqualTo(remedy.contains("terminators"));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "620 ohm | 4.5 V  | ; at least 200 mV is wanted | slight noise looks like the start of a message | true",
        "650 ohm | 4.33 V | against a receiver's 200 mV      | receivers may take noise on an idle line for a message, and miss the real one | true",
        "650 ohm | 3.3 V  | against a receiver's 200 mV      | receivers may take noise on an idle line for a message, and miss the real one | false",
      })
  void weakBiasIsReportedWithItsReason(
      String resistors, String supply, String end, String reason, boolean fix) {
    Result result = of(resistors, supply, "0.000001").results().get(0);
    assertThat(result.rule()).isEqualTo(WEAK);
    assertThat(result.message().fact()).endsWith(end);
    assertThat(result.message().reason()).isEqualTo(reason);
    assertThat(result.fix() != null).isEqualTo(fix);
  }

  /** A terminator that no cable asks for is the mistake; the bias is right. */
  @Test
  void atATerminatorOfTooLowAValueTheDriverIsReported() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .bias("Head House", "560 ohm", "5 V")
                .unit("12 ohm", "10 m")
                .unit("120 ohm", ""));
    assertThat(check.reported()).containsExactly("error driver.overloaded");
  }

  /** Weak pulls that devices have built in count in the sum and are no place of bias. */
  @Test
  void weakPullsCountInTheSumsOnly() {
    String one = "{at: %s, resistors: 4.7 kohm, supply: 5 V}";
    SiteText site =
        new SiteText()
            .line(
                "bias",
                "[{at: Head House, resistors: 620 ohm, supply: 4.1 V}, "
                    + one.formatted("Head House")
                    + ", "
                    + one.formatted("Bay 2")
                    + "]")
            .unit("120 ohm", "0 m")
            .unit("120 ohm", "");
    LineCheck check = LineCheck.of(site);
    assertThat(check.reported()).isEmpty();
    assertThat(check.with(", " + one.formatted("Bay 2"), "").rules()).containsExactly(WEAK);
    assertThat(check.with("{at: Head House, resistors: 620 ohm, supply: 4.1 V}, ", "").reported())
        .isEmpty();
  }

  /** Far from the middle no resistors of the range do; in the middle they do. */
  @Test
  void biasInTheMiddleOfTheLineIsOffered() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .bias("Head House", "450 ohm", "5 V")
                .unit("120 ohm", "240 m")
                .unit("none", "240 m")
                .unit("120 ohm", ""));
    Result result = check.results().get(0);
    assertThat(result.rule()).isEqualTo(WEAK);
    Matcher offered =
        Pattern.compile("move the bias to \"Bay 2\", fit ([0-9]+ ohm) each")
            .matcher(result.message().remedy());
    assertThat(offered.find()).as(result.message().remedy()).isTrue();
    assertThat(
            check
                .with(
                    "{at: Head House, resistors: 450 ohm",
                    "{at: Bay 2, resistors: " + offered.group(1))
                .reported())
        .isEmpty();
    assertThat(result.fix()).isNotNull();
  }

  /** 560 ohm hold this line from 12 V, and from 5 V do not at the worst corner. */
  @ParameterizedTest
  @CsvSource({"560 ohm, 12 V, fit resistors of ", "510 ohm, 12 V, feed the resistors from 5 V"})
  void theSupplyThatIsAskedForHoldsTheLine(String resistors, String supply, String remedy) {
    LineCheck check = of(resistors, supply, "1").with("cable-to-next: 0 m", "cable-to-next: 120 m");
    assertThat(check.reported()).containsExactly("warning bias.supply");
    Result result = check.results().get(0);
    assertThat(result.message().remedy()).startsWith("isolate the supply, " + remedy);
    LineCheck mended = check.with("supply: " + supply, "supply: 5 V");
    assertThat(mended.rules())
        .isEqualTo(remedy.startsWith("fit") ? List.of("bias.weak") : List.of());
    if (remedy.startsWith("fit")) {
      String each =
          result.message().remedy().replaceFirst(".*" + remedy, "").replaceFirst(" each.*", "");
      assertThat(mended.with("resistors: " + resistors, "resistors: " + each).reported()).isEmpty();
    }
  }

  /** Resistors that may be off by half are no bias, whatever is written on them. */
  @Test
  void resistorsOfTooWideAToleranceAreReplacedByCloserOnes() {
    LineCheck check = of("510 ohm", "5 V", "1").with("supply: 5 V", "supply: 5 V, tolerance: 50 %");
    assertThat(check.reported()).containsExactly("warning " + WEAK);
    assertThat(check.results().get(0).message().remedy())
        .endsWith(", of 5 % or better, and set resistors: 560 ohm and tolerance: 5 %");
    assertThat(
            check
                .with("resistors: 510 ohm", "resistors: 560 ohm")
                .with("tolerance: 50 %", "tolerance: 5 %")
                .reported())
        .isEmpty();
  }
}
