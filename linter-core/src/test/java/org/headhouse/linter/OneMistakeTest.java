package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Mistakes that touch several rules are told by one of them, with a remedy that mends. */
class OneMistakeTest {
  private static final String RECORD =
      """
      commissioning:
        date: 2026-03-14
        by: R.O.
        measured: {pair-resistance: 62 ohm, idle-voltage: 0.29 V, elsewhere: [{at: Hardening Bay, pair-resistance: 62 ohm, idle-voltage: 0.26 V}]}
        outdoor-readings-seen: [%s]
      """;

  private static String commissioned(String seen) {
    return Example.SITE
            .replace("stage: planned", "stage: commissioned")
            .replace("temperature: local}", "temperature: local}\n    vents: none")
            .replace("temperature: head}", "temperature: head}\n    vents: none")
        + RECORD.formatted(seen);
  }

  @Test
  void aHeadUnitWithTheRoleOfAFollowerIsMissing() {
    String text =
        commissioned("Seedling North, Hardening Bay").replace("role: head", "role: follower");
    assertThat(Checks.lines(text)).singleElement().asString().endsWith("[head.missing]");
  }

  @Test
  void aStationAtAFollowerIsToldOnce() {
    String text =
        Example.SITE
            .replace("at: Propagation", "at: Seedling North")
            .replaceFirst(
                "outdoor: \\{light: head, temperature: head\\}",
                "outdoor: {light: local, temperature: local}");
    assertThat(Checks.lines(text)).singleElement().asString().endsWith("[station.not-at-head]");
  }

  @ParameterizedTest
  @CsvSource({
    "'Seedling North, Hardenign Bay', 'write \"Hardening Bay\" [reference.unknown]'",
    "'Seedling North, Hardening Bay, Cold Store', "
        + "'delete it, or add the unit to the chain [reference.unknown]'"
  })
  void aWrongNameInTheRecordIsToldOnce(String seen, String end) {
    assertThat(Checks.lines(commissioned(seen))).singleElement().asString().endsWith(end);
  }

  @Test
  void aNameThatIsGivenTwiceIsToldOnce() {
    String text =
        commissioned("Seedling North, Hardening Bay")
                .replace("unit: Seedling North", "unit: Hardening Bay")
            + "supervision: {link: serial, zones: [Propagation, Seedling North, Hardening Bay]}\n";
    assertThat(Checks.lines(text)).singleElement().asString().endsWith("[name.duplicate]");
  }

  @ParameterizedTest
  @CsvSource({
    "250, 3, address.reserved",
    "0, 3, address.reserved",
    "2, 3, address.duplicate",
  })
  void theRemedyOfAnAddressMends(String address, String remedy, String rule) {
    String text = Example.with("address: 3", "address: " + address);
    assertThat(Checks.lines(text))
        .singleElement()
        .asString()
        .endsWith("give \"Hardening Bay\" address " + remedy + " [" + rule + "]");
    assertThat(Checks.lines(text.replace("address: " + address, "address: " + remedy)))
        .hasSizeLessThanOrEqualTo(rule.equals("address.duplicate") ? 1 : 0);
  }

  @Test
  void theRemedyOfAMissingTerminatorHasTheCablesImpedance() {
    String text =
        Example.SITE
            .replace("impedance: 120 ohm", "impedance: 100 ohm")
            .replaceFirst("termination: 120 ohm", "termination: none");
    assertThat(Checks.lines(text))
        .singleElement()
        .asString()
        .endsWith("fit 100 ohm, and record it [termination.missing-at-end]");
  }

  @Test
  void anAddressWithoutPrefixIsToldOnce() {
    String text =
        Example.with(
            "address: 2\n", "address: 2\n    network: {ip: 10.20.0.15, gateway: 10.20.0.1}\n");
    assertThat(Checks.lines(text))
        .singleElement()
        .asString()
        .endsWith("write for example 10.20.0.15/24 [network.bad-address]");
  }

  @ParameterizedTest
  @CsvSource({
    "site.yaml, 0, ''",
    "example.yaml, 0, ''",
    "sites/example/site.yaml, 0, ''",
    "sites/other/site.yaml, 1, 'name the folder example, or correct the id [site.file-name]'",
    "sites/other.yaml, 1, 'name the file example.yaml, or correct the id [site.file-name]'"
  })
  void theFileOrItsFolderHasTheName(String path, int results, String end) throws IOException {
    CheckReport report = SiteLinter.builder().build().checkText(path, Example.SITE);
    assertThat(report.results()).hasSize(results);
    report
        .results()
        .forEach(
            result ->
                assertThat(result.message().text() + " [" + result.rule() + "]").endsWith(end));
  }

  /** What other rules count on can neither be switched off nor accepted. */
  @ParameterizedTest
  @CsvSource({
    "yaml.syntax: {level: none}, 'write error, or delete the level'",
    "schema.bad-value: {level: warning}, 'write error, or delete the level'",
    "yaml.syntax: {level: error}, ''",
    "schema.unknown-key: {level: warning}, ''"
  })
  void thePolicyKeepsTheFoundations(String rule, String end) throws IOException {
    CheckReport report =
        SiteLinter.builder()
            .policy(
                SiteInput.text("linter.yaml", "format: 1\nrule-set: 1\nrules: {" + rule + "}\n"))
            .build()
            .checkText("example.yaml", Example.SITE);
    assertThat(report.results())
        .hasSize(end.isEmpty() ? 0 : 1)
        .allSatisfy(result -> assertThat(result.message().text()).endsWith(end));
  }

  @Test
  void aSuppressionKeepsTheFoundations() {
    String text =
        Example.with("role: follower", "role: folower")
            + "suppressions: [{rule: schema.bad-value, justification: It was so before.}]\n";
    assertThat(Checks.lines(text))
        .anySatisfy(line -> assertThat(line).endsWith("[schema.bad-value]"))
        .anySatisfy(
            line ->
                assertThat(line)
                    .contains("\"schema.bad-value\" cannot be suppressed")
                    .endsWith("[suppression.unknown-rule]"));
  }

  private static final String LINE =
      "line: {baud: 9600, parity: even, stop-bits: 1, cable: {gauge: 24 AWG, shielded: true,"
          + " impedance: 120 ohm}, bias: [{at: Propagation, resistors: 510 ohm, supply: 5 V}]}";

  private static String line(String more) {
    String rest = more.startsWith("bias") ? LINE.substring(0, LINE.indexOf(", bias")) : LINE;
    return Example.with(
        LINE, rest.replaceFirst("\\}$", rest.equals(LINE) ? "" : "}") + ", " + more + "}");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // over the range and with little margin: one of the two
        "bias: [{at: Propagation, resistors: 680 ohm, supply: 5.5 V}]|bias.out-of-range",
        // over the range and under the threshold: the graver of the two
        "bias: [{at: Propagation, resistors: 2 kohm, supply: 5 V}]|bias.weak",
        "bias: [{at: Propagation, resistors: 390 ohm, supply: 5 V}]|bias.out-of-range",
        // weak pulls alone hold no line
        "bias: [{at: Propagation, resistors: 2.2 kohm, supply: 5 V}]|bias.missing",
        "bias: [{at: Propagation, resistors: 510 ohm, supply: 5.6 V}]|bias.supply",
        "maximum-temperature: -300 degC|schema.out-of-range",
        "maximum-temperature: -460 degF|schema.out-of-range",
      })
  void aMistakeOfTheLineIsToldOnce(String more, String rule) {
    assertThat(Checks.lines(line(more))).singleElement().asString().endsWith("[" + rule + "]");
  }

  /** It weakens the bias and is off the impedance as well. */
  @Test
  void aTerminatorThatNoDriverCanBearIsToldOnce() {
    String text =
        line("bias: [{at: Propagation, resistors: 560 ohm, supply: 5 V}]")
            .replaceFirst("termination: 120 ohm", "termination: 12 ohm");
    assertThat(Checks.lines(text))
        .singleElement()
        .asString()
        .contains("fit a terminator of 120 ohm at \"Propagation\"")
        .endsWith("[driver.overloaded]");
  }

  @Test
  void anEmptyListIsToldOnce() {
    String noReadings = Example.with("readings: [light, temperature]", "readings: []");
    String noChain = Example.SITE.substring(0, Example.SITE.indexOf("chain:")) + "chain: []\n";
    assertThat(Checks.lines(noReadings)).singleElement().asString().contains(" [schema.");
    assertThat(Checks.lines(noChain)).singleElement().asString().contains(" [schema.");
  }
}
