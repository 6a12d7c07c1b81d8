package org.headhouse.linter.rules.signal;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A driver of 1.5 V, a receiver of 200 mV: The RS-485 Design Guide, TI SLLA272. The tolerances:
 * common practice, no source.
 */
class SignalWeakTest {
  private static final String RULE = "signal.weak";
  private static final String RC = "120 ohm + 1 nF";

  /** No bias and no load: 1.5 V · 120 / (120 + loop) at the far unit. */
  private static LineCheck of(String cable, String gauge) {
    return LineCheck.of(
            new SiteText()
                .line("cable", SiteText.cable(gauge, "120 ohm"))
                .unit("120 ohm", cable, "device-type: box")
                .unit("120 ohm", "", "device-type: box"))
        .types("id: box, unit-load: 0.000001");
  }

  /**
   * Computed: 200 mV at a loop of 780 ohm as written. At the worst corner, terminators of 114 ohm
   * and copper at 50 °C and 2 % more, at one of 741 ohm, which is 650 ohm at 20 °C.
   */
  @ParameterizedTest
  @CsvSource({
    "760 m, 31 AWG, ''", // 648.9 ohm
    "762 m, 31 AWG, warning", // 650.7 ohm
    "913 m, 31 AWG, warning", // 779.6 ohm
    "915 m, 31 AWG, error" // 781.3 ohm
  })
  void levels(String cable, String gauge, String level) {
    LineCheck check = of(cable, gauge);
    assertThat(check.reported().stream().filter(one -> one.endsWith(RULE)))
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  @Test
  void theVoltageTheNeedAndTheMarginAreReported() {
    assertThat(of("800 m", "31 AWG").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("\"Bay 2\" may receive only 192 mV from \"Head House\" (computed at worst)")
        .contains("at least 200 mV is wanted", "800 m of this cable");
    assertThat(of("800 m", "31 AWG").marked(RULE)).isEqualTo("Bay 2");
  }

  @ParameterizedTest
  @CsvSource({"59 mV, warning", "58 mV, ''", "0 V, ''", "1 V, warning"})
  void theMarginIsAParameter(String margin, String level) {
    // 1.5 V · 114 / (114 + 1.02 · 1.1179 · 480.6) is 258.3 mV (computed).
    List<String> reported = of("895 m", "29 AWG").parameter(RULE, "margin", margin).reported();
    assertThat(reported.stream().filter(one -> one.endsWith(RULE)))
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** Hot, biased, with loads and capacitors: what the rule is for. */
  private static SiteText hot(String gauge) {
    return new SiteText()
        .line("cable", SiteText.cable(gauge, "120 ohm"))
        .line("maximum-temperature", "60 degC")
        .bias("Head House", "450 ohm", "5 V");
  }

  private static final Pattern GAUGE = Pattern.compile("use ([0-9]+) AWG or thicker");
  private static final Pattern REPEATER =
      Pattern.compile("fit a repeater at or before \"([^\"]+)\"");

  @ParameterizedTest
  @CsvSource({"24 AWG, 24", "26 AWG, 8", "0.2 mm2, 16", "28 AWG, 2"})
  void theGaugeThatIsOfferedMendsIt(String gauge, int units) {
    String hop = 990 / (units - 1) + " m";
    LineCheck check = LineCheck.of(hot(gauge).unit(RC, hop).units(units - 2, hop).unit(RC, ""));
    assertThat(check.rules()).contains(RULE);
    String reported = check.reportedBy(RULE).get(0);
    Matcher offered = GAUGE.matcher(reported);
    assertThat(offered.find()).as(reported).isTrue();
    int awg = Integer.parseInt(offered.group(1));
    assertThat(check.with(gauge, awg + " AWG").rules()).isEmpty();
    if (awg < 24) {
      assertThat(check.with(gauge, (awg + 2) + " AWG").rules()).contains(RULE);
    }
  }

  @Test
  void theRepeaterThatIsOfferedMendsIt() {
    LineCheck check = LineCheck.of(hot("24 AWG").unit(RC, "90 m").units(10, "90 m").unit(RC, ""));
    assertThat(check.reported()).containsExactly("error " + RULE);
    Matcher offered = REPEATER.matcher(check.reportedBy(RULE).get(0));
    assertThat(offered.find()).isTrue();
    int at = Integer.parseInt(offered.group(1).replace("Bay ", ""));
    assertThat(at).isBetween(3, 11);
    SiteText divided = hot("24 AWG").unit(RC, "90 m").units(at - 2, "90 m").unit("none", "0 m");
    divided.repeater("Boiler", RC, "90 m").units(11 - at, "90 m").unit(RC, "");
    assertThat(LineCheck.of(divided).reported()).isEmpty();
  }

  /** A repeater at the head unit divides nothing. */
  @Test
  void aFirstRunThatIsTooLongIsDivided() {
    String reported =
        LineCheck.of(hot("24 AWG").unit(RC, "980 m").unit(RC, "")).reportedBy(RULE).get(0);
    assertThat(reported).contains("fit a repeater in the run after \"Head House\"");
  }

  /** 1.5 V less what ten metres take are under the 1.6 V that are asked for. */
  @Test
  void whereNoCableIsShortEnoughThePartsAreToBlame() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .line("cable", SiteText.cable("24 AWG", "120 ohm"))
                .unit("120 ohm", "10 m")
                .unit("120 ohm", ""));
    assertThat(check.parameter(RULE, "margin", "1400 mV").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("no cable is short enough");
  }

  @ParameterizedTest
  @CsvSource({
    "gauge: 24 AWG, gauge: thin",
    "termination: none, termination: 0 ohm",
    "cable-to-next: 90 m, cable-to-next: far",
    "supply: 5 V, supply: 0 V",
    "maximum-temperature: 60 degC, maximum-temperature: -300 degC",
    // One mistake: a third terminator, 33 loads, a typing error.
    "termination: none, termination: 120 ohm",
    "cable-to-next: 90 m, cable-to-next: 900 m"
  })
  void staysSilent(String text, String other) {
    LineCheck check = LineCheck.of(hot("24 AWG").unit(RC, "90 m").units(10, "90 m").unit(RC, ""));
    assertThat(check.rules()).contains(RULE);
    assertThat(check.with(text, other).rules()).doesNotContain(RULE);
  }

  /** The margin is only of interest where the threshold is reached. */
  @Test
  void underTheThresholdTheMarginIsNotReported() {
    assertThat(of("915 m", "31 AWG").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("; a receiver needs 200 mV: ");
  }

  @Test
  void aTerminatorOfTooLowAValueIsTheMistake() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .line("cable", SiteText.cable("24 AWG", "120 ohm"))
                .unit("120 ohm", "300 m")
                .unit("5 ohm", ""));
    assertThat(check.reported()).containsExactly("error driver.overloaded");
  }
}
