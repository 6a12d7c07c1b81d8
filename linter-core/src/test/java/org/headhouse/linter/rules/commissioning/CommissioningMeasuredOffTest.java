package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Parts of 5 %, copper of −10 to 50 °C, a hand meter of 1 % and 0.8 ohm or 3 mV: common practice,
 * no source. Every limit is computed beside its case.
 */
class CommissioningMeasuredOffTest {
  private static final String RULE = "commissioning.measured-off";
  private static final String BIAS =
      "  bias: [{at: Head House, resistors: 560 ohm, supply: 5 V}]\n";

  private static SiteText text() {
    return new SiteText()
        .bias("Head House", "560 ohm", "5 V")
        .unit("120 ohm", "0 m", "device-type: box")
        .unit("120 ohm", "", "device-type: box");
  }

  /** Without loads and cable. */
  private static LineCheck of(String measured) {
    return boxes(text().measured(measured).toString());
  }

  private static LineCheck boxes(String site) {
    return LineCheck.of(site).types("id: box, unit-load: 0.000001");
  }

  private static List<String> expected(String level) {
    return level.isEmpty() ? List.of() : List.of(level + " " + RULE);
  }

  /**
   * 57 beside 2 · 532 ohm to 63 ohm, so readings of 52.77 to 64.44 ohm; 4.75 V / (1 + 588 / 28.5)
   * to 5.25 V / (1 + 532 / 31.5), so readings of 214.4 to 299.5 mV.
   */
  @ParameterizedTest
  @CsvSource({
    "pair-resistance: 52.7 ohm, error",
    "pair-resistance: 52.8 ohm, ''",
    "pair-resistance: 64.4 ohm, ''",
    "pair-resistance: 64.5 ohm, error",
    "pair-resistance: 0.058 kohm, ''",
    "pair-resistance: 0 ohm, error",
    "pair-resistance: 118 ohm, error",
    "idle-voltage: 214 mV, error",
    "idle-voltage: 215 mV, ''",
    "idle-voltage: 299 mV, ''",
    "idle-voltage: 300 mV, error",
    "idle-voltage: 0.25 V, ''",
    "idle-voltage: 0 V, error",
    "idle-voltage: -0.25 V, error"
  })
  void limits(String measured, String level) {
    assertThat(of(measured).reported()).isEqualTo(expected(level));
  }

  /** In the unit of the file; a limit that is shown is on the right side of what was measured. */
  @ParameterizedTest
  @CsvSource({
    "pair-resistance: 118 ohm, 118 ohm, 52.8 to 64.4 ohm, a terminator is missing",
    "pair-resistance: 0.0527 kohm, 0.0527 kohm, 0.0528 to 0.0644 kohm, an extra terminator",
    "pair-resistance: 40 ohm, 40 ohm, 52.8 to 64.4 ohm, an extra terminator",
    "idle-voltage: 214 mV, 214 mV, 215 to 299 mV, has more load than is in the file",
    "idle-voltage: 0.1 V, 0.1 V, 0.215 to 0.299 V, bias is missing or weak",
    "idle-voltage: 0.4 V, 0.4 V, 0.215 to 0.299 V, a terminator is missing",
    "idle-voltage: -254 mV, -254 mV, 215 to 299 mV, the meter leads or the pair are crossed"
  })
  void theRangeIsReported(String measured, String marked, String range, String cause) {
    LineCheck check = of(measured);
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(marked, range, cause)
        .contains("at \"Head House\"")
        .containsIgnoringCase("measure again");
    assertThat(check.marked(RULE)).isEqualTo(marked);
  }

  @Test
  void bothCanBeOff() {
    assertThat(of("pair-resistance: 118 ohm, idle-voltage: 480 mV").rules())
        .containsExactly(RULE, RULE);
  }

  /** To write what is really fitted: the far terminator is not there. */
  @Test
  void whatIsReallyFittedExplainsIt() {
    LineCheck check =
        of("pair-resistance: 118 ohm")
            .with(
                "termination: 120 ohm\n    outdoor: {light: head}",
                "termination: none\n    outdoor: {light: head}");
    assertThat(check.rules()).containsExactly("termination.missing-at-end");
  }

  /** 71.7 ohm, 0.8 off, are 12.5 % over 63. */
  @ParameterizedTest
  @CsvSource({"12 %, ''", "11 %, error", "0 %, error", "20 %, ''"})
  void theErrorOfTheMeterIsAParameter(String tolerance, String level) {
    assertThat(of("pair-resistance: 71.7 ohm").parameter(RULE, "tolerance", tolerance).reported())
        .isEqualTo(expected(level));
  }

  /** 650 ohm may give no more than 190 mV, and 220 mV as written; (200 + 3) / 0.99 is 205.05. */
  @ParameterizedTest
  @CsvSource({"205 mV, true", "206 mV, false", "0.203 V, true"})
  void whatAReceiverNeedsMustBeProved(String measured, boolean refused) {
    LineCheck check = of("idle-voltage: " + measured).with("560 ohm", "650 ohm");
    assertThat(check.rules().contains(RULE)).isEqualTo(refused);
    if (refused) {
      assertThat(check.reportedBy(RULE)).singleElement().asString().contains("a receiver needs");
    }
  }

  /** That needs no figures. */
  @ParameterizedTest
  @CsvSource({
    "cable-to-next: 0 m, pair: straight",
    "gauge: 24 AWG, gauge: thin",
    "resistors: 560 ohm, resistors: some"
  })
  void whatAReceiverNeedsIsJudgedOnAnUnknownLine(String text, String other) {
    assertThat(of("idle-voltage: 150 mV").with(text, other).rules()).contains(RULE);
    assertThat(of("idle-voltage: 950 mV").with(text, other).rules()).doesNotContain(RULE);
    assertThat(of("pair-resistance: 9 ohm").with("gauge: 24 AWG", "gauge: thin").rules())
        .doesNotContain(RULE);
  }

  /** No range is known then, but over 50 mV (common practice, no source) something holds it. */
  @ParameterizedTest
  @CsvSource({
    "0 V, ''",
    "50 mV, ''",
    "-50 mV, ''",
    "51 mV, warning",
    "0.24 V, warning",
    "-0.051 V, warning"
  })
  void aLineWithoutBias(String measured, String level) {
    LineCheck check = of("idle-voltage: " + measured).with(BIAS, "");
    assertThat(check.reported()).isEqualTo(expected(level));
    if (!level.isEmpty()) {
      assertThat(check.reportedBy(RULE))
          .singleElement()
          .asString()
          .contains("the file has no bias there", "find the bias")
          .contains(measured.startsWith("-") ? "crossed" : "built in");
    }
  }

  /** Whoever is in need of bias is not content with what is left over. */
  @ParameterizedTest
  @CsvSource({"0 V, true", "0.1 V, true", "0.24 V, false"})
  void aLineThatNeedsBias(String measured, boolean refused) {
    LineCheck check =
        LineCheck.of(text().measured("idle-voltage: " + measured))
            .with(BIAS, "")
            .types("id: box, idle-bias: needed");
    assertThat(check.reported().contains("error " + RULE)).isEqualTo(refused);
    assertThat(check.rules()).contains("bias.missing");
  }

  /** Pulls of 4.7 kohm alone give 5 V / (1 + 4700 / 30), 32 mV; 1.5 kohm hold, but not enough. */
  @Test
  void weakPullsAreNoBias() {
    LineCheck pulls = of("idle-voltage: 0 V").with("560 ohm", "4.7 kohm");
    assertThat(pulls.rules()).isEmpty();
    assertThat(of("idle-voltage: 60 mV").with("560 ohm", "4.7 kohm").reported())
        .containsExactly("warning " + RULE);
    assertThat(of("idle-voltage: 60 mV").with("560 ohm", "2.2 kohm").rules()).isEmpty();
  }

  /** A bias at an item that nobody knows may be anywhere. */
  @ParameterizedTest
  @CsvSource({
    "at: Head House, resistors, at: Nowhere, resistors",
    "at: Head House, resistors, resistors, side"
  })
  void aBiasWithoutPlaceLeavesTheVoltageOpen(String at, String key, String other, String otherKey) {
    LineCheck check =
        of("idle-voltage: 0.25 V").with("{" + at + ", " + key, "{" + other + ", " + otherKey);
    assertThat(check.rules()).doesNotContain(RULE).isNotEmpty();
  }

  /** Capacitors pass no direct current; the bias still makes a voltage. */
  @ParameterizedTest
  @CsvSource({"pair-resistance: 60 ohm, ''", "idle-voltage: 0.25 V, error"})
  void capacitorsLeaveThePairOpen(String measured, String level) {
    assertThat(of(measured).with("120 ohm\n", "120 ohm + 1 nF\n").reported())
        .isEqualTo(expected(level));
  }

  @ParameterizedTest
  @CsvSource({"stage: commissioned, stage: planned", "idle-voltage: 0 V, idle-voltage: 0"})
  void staysSilent(String text, String other) {
    LineCheck check = of("idle-voltage: 0 V");
    assertThat(check.rules()).containsExactly(RULE);
    assertThat(check.with(text, other).rules()).doesNotContain(RULE);
  }

  /** A third terminator on paper has its own result; the computed range is then none. */
  @Test
  void aLineThatIsOutOfOrderIsNotCompared() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .unit("120 ohm", "0 m")
                .unit("120 ohm", "0 m")
                .unit("120 ohm", "")
                .measured("pair-resistance: 58 ohm, idle-voltage: 1 V"));
    assertThat(check.rules()).containsExactly("termination.mid-line");
  }
}
