package org.headhouse.linter.rules.driver;

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
 * A driver gives 1.5 V into 54 ohm: two terminators of 120 ohm and 32 unit loads of 12 kohm from
 * each conductor to common (TIA/EIA-485-A in TI SLLA272). Without cable the load of a line is that
 * of its parts in parallel: terminators, 24 kohm / unit load, twice each bias resistor.
 */
class DriverOverloadedTest {
  private static final String RULE = "driver.overloaded";
  private static final Pattern OHMS = Pattern.compile("has a load of ([0-9.]+) ohm");

  private static LineCheck check(int units, String load, String terminator, String bias) {
    SiteText site = new SiteText();
    if (!bias.isEmpty()) {
      site.line("bias", bias);
    }
    site.unit(terminator, "0 m", "device-type: box").units(units - 2, "0 m", "device-type: box");
    return LineCheck.of(site.unit(terminator, "", "device-type: box"))
        .types("id: box, unit-load: " + load);
  }

  private static String bias(String each, String supply) {
    return "[{at: Head House, resistors: " + each + ", supply: " + supply + "}]";
  }

  private static double parallel(double... ohms) {
    double siemens = 0;
    for (double one : ohms) {
      siemens += 1 / one;
    }
    return 1 / siemens;
  }

  /**
   * Both sides of 54 ohm. 60 ohm of terminators, and what the rest of the line has.
   *
   * @param each bias resistor in ohms, or 0 without
   */
  @ParameterizedTest
  @CsvSource({
    "2, 1/8, 120, 0",
    "32, 1, 120, 0",
    "32, 1, 116, 0",
    "32, 1, 115, 0",
    "2, 1/8, 109, 0",
    "2, 1/8, 108, 0",
    "2, 1/8, 107, 0",
    "32, 1, 120, 650",
    "25, 1, 120, 650",
    "26, 1, 120, 650",
    "16, 1, 120, 450",
    "19, 1, 120, 510",
  })
  void theLoadOfADriver(int units, String load, double terminator, double each) {
    double loads = units * (load.equals("1") ? 1 : 0.125);
    double ohms = parallel(terminator / 2, 24_000 / loads, each == 0 ? Double.MAX_VALUE : 2 * each);
    LineCheck check =
        check(
            units,
            load,
            (int) terminator + " ohm",
            each == 0 ? "" : bias((int) each + " ohm", "5.5 V"));
    List<String> found = check.reportedBy(RULE);
    assertThat(found).as("%s ohm", ohms).hasSize(ohms < 54 ? 1 : 0);
    for (String one : found) {
      Matcher shown = OHMS.matcher(one);
      assertThat(shown.find()).isTrue();
      assertThat(Double.parseDouble(shown.group(1)))
          .isCloseTo(ohms, org.assertj.core.api.Assertions.within(0.051))
          .isLessThan(54);
    }
  }

  /** Whether a terminator has a capacitor makes no difference while bits change. */
  @Test
  void aCapacitorInSeriesHelpsNoDriver() {
    assertThat(check(2, "1/8", "100 ohm + 1 nF", "").rules()).containsExactly(RULE);
    assertThat(check(2, "1/8", "120 ohm + 1 nF", "").rules()).isEmpty();
  }

  /** What is proposed mends the line, and no other rule then speaks. */
  @ParameterizedTest
  @CsvSource({
    "2, 1/8, 100 ohm, 0, 5 V, fit a terminator of 120 ohm at",
    "12, 1/8, 100 ohm, 510, 5 V, fit a terminator of 120 ohm at",
    "31, 1, 110 ohm, 0, 5 V, fit a terminator of 120 ohm at",
    // The bias holds the idle line against these terminators, too.
    "26, 1, 120 ohm, 560, 5.5 V, fit a terminator of 130 ohm at",
    // It does not: with a capacitor it does, and the drivers have their load all the same.
    "26, 1, 120 ohm, 650, 5 V, fit a terminator of 130 ohm + 1 nF at",
    "32, 1, 120 ohm, 450, 3.3 V, fit a terminator of 130 ohm + 1 nF at",
  })
  void whatIsProposed(
      int units, String load, String terminator, int each, String supply, String remedy) {
    String bias = each == 0 ? "" : bias(each + " ohm", supply);
    LineCheck check = check(units, load, terminator, bias);
    Result result =
        check.results().stream().filter(one -> one.rule().equals(RULE)).findFirst().orElseThrow();
    assertThat(result.message().remedy()).startsWith("isolate the supply, " + remedy);
    String value = remedy.replace("fit a terminator of ", "").replace(" at", "");
    assertThat(check(units, load, value, bias).rules()).isEmpty();
  }

  /** Two results do not advise against each other: one change serves both. */
  @ParameterizedTest
  @CsvSource({"26, 620, 5 V", "26, 450, 3.3 V", "30, 510, 4 V", "32, 650, 5 V"})
  void theIdleLineGetsTheSameAdvice(int units, int each, String supply) {
    List<Result> results = check(units, "1", "120 ohm", bias(each + " ohm", supply)).results();
    assertThat(results).extracting(Result::rule).containsExactlyInAnyOrder(RULE, "bias.weak");
    assertThat(results)
        .extracting(result -> result.message().remedy())
        .hasSize(2)
        .containsOnly(results.get(0).message().remedy());
  }
}
