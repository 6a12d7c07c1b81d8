package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** {@code commissioning.measured-off} at other places and on later visits. */
class MeasuredElsewhereTest {
  private static final String RULE = "commissioning.measured-off";

  /**
   * Before the repeater two terminators of 120 ohm, behind it two of 150 ohm, and bias in the
   * second segment.
   */
  private static LineCheck of(String measured) {
    return LineCheck.of(
            new SiteText()
                .unit("120 ohm", "0 m", "device-type: box")
                .repeater("Boiler", "120 ohm", "500 m")
                .unit("none", "0 m", "device-type: box")
                .unit("150 ohm", "", "device-type: box")
                .measured(measured)
                .bias("Boiler", "510 ohm", "5 V"))
        .types("id: box, unit-load: 0.000001")
        .with("out: 120 ohm", "out: 150 ohm")
        .with("impedance: 120 ohm", "impedance: 135 ohm");
  }

  private static String elsewhere(String one) {
    return "elsewhere: [{" + one + "}]";
  }

  /**
   * 24 AWG has 84.2 ohm a kilometre at 20 °C (NBS Handbook 100), so out and back 500 m have 84.2
   * ohm. Between D1 and D0 at the repeater: 150 beside 234 ohm, 91.4; at the end the same; the bias
   * of 2 · 510 ohm may lie across it, and one unit load. Computed nominal; limits of 5 % and more
   * beside.
   */
  @ParameterizedTest
  @CsvSource({
    "'at: Boiler, side: in, pair-resistance: 60 ohm', true",
    "'at: Boiler, side: in, pair-resistance: 90 ohm', false",
    "'at: Boiler, side: out, pair-resistance: 60 ohm', false",
    "'at: Boiler, side: out, pair-resistance: 90 ohm', true",
    "'at: Boiler, pair-resistance: 90 ohm', true",
    "'at: Boiler, pair-resistance: 60 ohm', false",
    "'at: Bay 2, pair-resistance: 90 ohm', true",
    "'at: Bay 3, pair-resistance: 90 ohm', true",
    "'at: Bay 3, pair-resistance: 60 ohm', false",
    "'at: Bay 3, pair-resistance: 148 ohm', false",
    "'at: Bay 3, side: in, pair-resistance: 90 ohm', true",
    "'at: Head House, pair-resistance: 60 ohm', true",
    "'at: Head House, pair-resistance: 90 ohm', false",
  })
  void eachPlaceHasItsSegment(String measured, boolean sound) {
    assertThat(of(elsewhere(measured)).rules()).isEqualTo(sound ? List.of() : List.of(RULE));
  }

  @Test
  void thePlaceIsTold() {
    LineCheck check = of(elsewhere("at: Boiler, side: out, pair-resistance: 60 ohm"));
    assertThat(check.reportedBy(RULE)).singleElement().asString().contains("\"Boiler\", side out");
    assertThat(check.marked(RULE)).isEqualTo("60 ohm");
  }

  /** The first segment has no bias; in the second it falls along 500 m. */
  @ParameterizedTest
  @CsvSource({
    "'at: Head House, idle-voltage: 0.3 V', warning",
    "'at: Boiler, side: in, idle-voltage: 0 V', ''",
    "'at: Boiler, side: out, idle-voltage: 0 V', error",
    "'at: Boiler, side: out, idle-voltage: 0.41 V', ''",
    "'at: Bay 3, idle-voltage: 0.41 V', error",
    "'at: Bay 3, idle-voltage: 0.26 V', ''",
    "'at: Bay 3, idle-voltage: -0.26 V', error",
  })
  void eachPlaceHasItsVoltage(String measured, String level) {
    assertThat(of(elsewhere(measured)).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  @ParameterizedTest
  @CsvSource({"at: Nowhere", "'at: Boiler, side: up'"})
  void aPlaceThatIsNotThereHasItsOwnResult(String at) {
    assertThat(of(elsewhere(at + ", pair-resistance: 9 ohm")).rules())
        .doesNotContain(RULE)
        .isNotEmpty();
  }

  private static List<String> renewed(String first, String later) {
    return of(first)
        .with(
            "by: R.O., ",
            "by: R.O., renewed: ["
                + "{date: 2021-01-01, by: R.O., reason: Bay 3 exchanged, measured: {"
                + later
                + "}}], ")
        .rules();
  }

  /** A later reading at the same place is of the line as it is now. */
  @ParameterizedTest
  @CsvSource({
    "pair-resistance: 118 ohm, pair-resistance: 60 ohm, 0",
    "pair-resistance: 60 ohm, pair-resistance: 118 ohm, 1",
    "pair-resistance: 118 ohm, idle-voltage: 0 V, 1",
    "pair-resistance: 118 ohm, pair-resistance: 119 ohm, 1",
    "pair-resistance: 118 ohm, 'elsewhere: [{at: Bay 3, pair-resistance: 90 ohm}]', 1",
    "pair-resistance: 118 ohm, 'elsewhere: [{at: Head House, pair-resistance: 60 ohm}]', 0",
    "'elsewhere: [{at: Bay 3, pair-resistance: 9 ohm}]', 'elsewhere: [{at: Bay 3, pair-resistance: 90 ohm}]', 0",
  })
  void onlyWhatWasMeasuredLastIsJudged(String first, String later, int results) {
    assertThat(renewed(first, later)).hasSize(results).allMatch(RULE::equals);
  }

  /** The order of the file does not matter here; {@code commissioning.date} reports it. */
  @Test
  void theDayDecides() {
    LineCheck check =
        of("pair-resistance: 118 ohm")
            .with(
                "by: R.O., ",
                "by: R.O., renewed: ["
                    + "{date: 2022-01-01, by: R.O., measured: {pair-resistance: 60 ohm}},"
                    + "{date: 2021-01-01, by: R.O., measured: {pair-resistance: 119 ohm}}], ");
    assertThat(check.rules()).containsExactly("commissioning.date");
    assertThat(check.with("2022-01-01", "2020-06-01").rules()).containsExactly(RULE);
    assertThat(check.with("2022-01-01", "2020-06-01").marked(RULE)).isEqualTo("119 ohm");
  }

  /** Of two readings of one visit neither is the earlier. */
  @Test
  void bothReadingsOfAVisitAreJudged() {
    assertThat(
            of("pair-resistance: 118 ohm, " + elsewhere("at: Head House, pair-resistance: 119 ohm"))
                .rules())
        .containsExactly(RULE, RULE);
  }
}
