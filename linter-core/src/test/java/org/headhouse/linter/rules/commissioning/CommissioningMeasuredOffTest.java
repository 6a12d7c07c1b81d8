package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The network is solved by nodal analysis (computed); 10 %: common practice, no source. */
class CommissioningMeasuredOffTest {
  private static final String RULE = "commissioning.measured-off";

  /** 56.95 to 60 ohm, and 5 V / (1 + 560 / 30) = 254.2 mV (computed). */
  private static LineCheck of(String measured) {
    return LineCheck.of(
            new SiteText()
                .bias("Head House", "560 ohm", "5 V")
                .unit("120 ohm", "0 m", "device-type: box")
                .unit("120 ohm", "", "device-type: box")
                .measured(measured))
        .types("id: box, unit-load: 0.000001");
  }

  @ParameterizedTest
  @CsvSource({
    "pair-resistance: 51.2 ohm, error", // 51.25
    "pair-resistance: 51.3 ohm, ''",
    "pair-resistance: 66 ohm, ''",
    "pair-resistance: 66.1 ohm, error",
    "pair-resistance: 0.058 kohm, ''",
    "pair-resistance: 0 ohm, error",
    "pair-resistance: 118 ohm, error",
    "idle-voltage: 228 mV, error", // 228.8
    "idle-voltage: 229 mV, ''",
    "idle-voltage: 279 mV, ''",
    "idle-voltage: 280 mV, error", // 279.7
    "idle-voltage: 0.25 V, ''",
    "idle-voltage: 0 V, error"
  })
  void limits(String measured, String level) {
    assertThat(of(measured).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  @ParameterizedTest
  @CsvSource({
    "pair-resistance: 118 ohm, 118 ohm, '56.9 ohm to 60.0 ohm', a terminator is missing",
    "pair-resistance: 40 ohm, 40 ohm, '56.9 ohm to 60.0 ohm', a third terminator",
    "idle-voltage: 0.2 V, 0.2 V, '254 mV to 254 mV', bias is missing or weak",
    "idle-voltage: 0.4 V, 0.4 V, '254 mV to 254 mV', a terminator is missing"
  })
  void theRangeIsReported(String measured, String marked, String range, String cause) {
    LineCheck check = of(measured);
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(marked, range, cause)
        .contains("then measure again");
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

  @ParameterizedTest
  @CsvSource({"20 %, ''", "19 %, error", "0 %, error", "100 %, ''"})
  void theToleranceIsAParameter(String tolerance, String level) {
    // 71.7 is 19.5 % over 60.
    assertThat(of("pair-resistance: 71.7 ohm").parameter(RULE, "tolerance", tolerance).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** Capacitors leave the pair open, so that only a value under that of the loads is off. */
  @ParameterizedTest
  @CsvSource({"999999 kohm, ''", "60 ohm, error"})
  void anOpenPairHasNoUpperLimit(String measured, String level) {
    LineCheck check = of("pair-resistance: " + measured).with("120 ohm\n", "120 ohm + 1 nF\n");
    assertThat(check.reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
    if (!level.isEmpty()) {
      assertThat(check.reportedBy(RULE)).singleElement().asString().contains("to an open pair");
    }
  }

  /** Without bias nothing is known of the idle voltage. */
  @ParameterizedTest
  @CsvSource({
    "'  bias: [{at: Head House, resistors: 560 ohm, supply: 5 V}]\n', ''",
    "resistors: 560 ohm, resistors: some",
    "stage: commissioned, stage: planned",
    "idle-voltage: 0 V, idle-voltage: 0",
    "cable-to-next: 0 m, pair: straight",
    "gauge: 24 AWG, gauge: thin"
  })
  void staysSilent(String text, String other) {
    LineCheck check = of("idle-voltage: 0 V");
    assertThat(check.rules()).containsExactly(RULE);
    assertThat(check.with(text.replace("\\n", "\n"), other).rules()).doesNotContain(RULE);
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
                .measured("pair-resistance: 58 ohm"));
    assertThat(check.rules()).containsExactly("termination.mid-line");
  }

  /** Only the segment of the head unit was measured. */
  @Test
  void aRepeaterEndsWhatWasMeasured() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .unit("120 ohm", "0 m")
                .repeater("Boiler", "120 ohm", "0 m")
                .unit("150 ohm", "")
                .measured("pair-resistance: 60 ohm"));
    assertThat(check.rules()).isEmpty();
  }
}
