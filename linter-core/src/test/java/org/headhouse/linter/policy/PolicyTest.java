package org.headhouse.linter.policy;

import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.time.Period;
import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Voltage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PolicyTest {

  /** Tells its parameters, one of each type. */
  private record Telling(int ruleSet) implements SiteRule {
    private static final Parameter<String> CHOICE =
        new Parameter<>("choice", "a word", ParameterType.choice("left", "right"), "left");
    private static final Parameter<Voltage> VOLTAGE =
        new Parameter<>("voltage", "a voltage", ParameterType.voltage(), "20 mV");
    private static final Parameter<Length> LENGTH =
        new Parameter<>("length", "a length", ParameterType.length(), "20 m");
    private static final Parameter<Interval> INTERVAL =
        new Parameter<>("interval", "a time", ParameterType.interval(), "100 ms");
    private static final Parameter<Double> PERCENT =
        new Parameter<>("percent", "a share", ParameterType.percent(), "70 %");
    private static final Parameter<Double> NUMBER =
        new Parameter<>("number", "a number", ParameterType.number(), "0.66");
    private static final Parameter<Period> PERIOD =
        new Parameter<>("period", "a period", ParameterType.period(), "never");

    @Override
    public RuleDescriptor descriptor() {
      return new RuleDescriptor(
          "house.telling",
          "It tells its parameters.",
          Level.NOTE,
          ruleSet,
          List.of(CHOICE, VOLTAGE, LENGTH, INTERVAL, PERCENT, NUMBER, PERIOD),
          false,
          List.of());
    }

    @Override
    public void check(Site site, RuleContext context) {
      String values =
          context.value(CHOICE)
              + " "
              + context.value(VOLTAGE).volts()
              + " "
              + context.value(LENGTH).metres()
              + " "
              + context.value(INTERVAL).seconds()
              + " "
              + context.value(PERCENT)
              + " "
              + context.value(NUMBER);
      context.report(site.id().place(), new Message(values, "a reason", "a remedy"));
    }
  }

  private static CheckReport check(byte[] policy, String site, int ruleSet) throws IOException {
    return SiteLinter.builder()
        .policy(new SiteInput("linter.yaml", most -> policy))
        .withoutBaseline()
        .rule(new Telling(ruleSet))
        .build()
        .checkText("example.yaml", site);
  }

  private static List<String> lines(String policy, String site) throws IOException {
    return lines(check(policy.getBytes(UTF_8), site, 9));
  }

  private static List<String> lines(CheckReport report) {
    assertThat(report.notifications()).isEmpty();
    return report.results().stream().map(TextReport::inOneLine).toList();
  }

  /** What is wrong in the policy; the site is clean. */
  private static List<String> lines(String policy) throws IOException {
    return lines(policy, Example.SITE);
  }

  private static final String HEAD = "format: 1\nrule-set: 1\n";
  private static final String GAP = Example.with("address: 3", "address: 4");

  @ParameterizedTest
  @CsvSource({
    "error, error",
    "warning, warning",
    "note, note",
    "none,",
  })
  void levelsAreChangedAndSwitchedOff(String written, String level) throws IOException {
    String policy = HEAD + "rules: {address.gap: {level: " + written + "}}\n";
    List<Level> levels =
        check(policy.getBytes(UTF_8), GAP, 9).results().stream().map(one -> one.level()).toList();
    assertThat(levels)
        .isEqualTo(level == null ? List.of() : List.of(Level.ofWord(level).orElseThrow()));
  }

  /** A rule is on from its rule set on, or where the policy gives it a level. */
  @ParameterizedTest
  @CsvSource({"1, '', true", "2, '', false", "2, 'rules: {house.telling: {level: note}}', true"})
  void theRuleSetFreezesWhichRulesAreOn(int ruleSet, String rules, boolean on) throws IOException {
    CheckReport report = check((HEAD + rules).getBytes(UTF_8), Example.SITE, ruleSet);
    assertThat(report.results()).hasSize(on ? 1 : 0);
  }

  @ParameterizedTest
  @CsvSource({
    "choice: left, left 0.02 20.0 0.1 0.7 0.66",
    "choice: right, right 0.02 20.0 0.1 0.7 0.66",
    "voltage: 0.05 V, left 0.05 20.0 0.1 0.7 0.66",
    "length: 10 ft, left 0.02 3.048 0.1 0.7 0.66",
    "interval: 1 min, left 0.02 20.0 60.0 0.7 0.66",
    "percent: 80 %, left 0.02 20.0 0.1 0.8 0.66",
    "percent: 12.5%, left 0.02 20.0 0.1 0.125 0.66",
    "number: 2, left 0.02 20.0 0.1 0.7 2.0",
    "number: 0.78, left 0.02 20.0 0.1 0.7 0.78"
  })
  void parametersReachTheRule(String written, String expected) throws IOException {
    String policy = HEAD + "rules: {house.telling: {level: note, parameters: {" + written + "}}}\n";
    assertThat(lines(policy))
        .containsExactly(
            "example.yaml:2:7: note: " + expected + ": a reason; a remedy [house.telling]");
  }

  @ParameterizedTest
  @CsvSource({
    "choice: rihgt, cannot be \"rihgt\", write right",
    "choice: up, cannot be \"up\", 'it must be one of left, right; write for example left'",
    "choice: [left], cannot be a list, 'it must be one of left, right; write for example left'",
    "voltage: 20, cannot be \"20\", 'it must be a voltage such as 20 mV; write for example 20 mV'",
    "length: 20 s, cannot be \"20 s\", 'it must be a length such as 20 m; write for example 20 m'",
    "interval: soon, cannot be \"soon\", 'it must be a time such as 100 ms; write for example 100 ms'",
    "percent: 0.7, cannot be \"0.7\", 'it must be a share such as 70 %; write for example 70 %'",
    "number: -1, cannot be \"-1\", 'it must be a number such as 0.66; write for example 0.66'",
    "period: yearly, cannot be \"yearly\", 'it must be a period of at most 30 years such as 12 months or 1 year, or never; write for example 12 months'",
  })
  void aParameterOfAnotherTypeIsTold(String written, String fact, String remedy)
      throws IOException {
    String policy = HEAD + "rules:\n  house.telling:\n    parameters:\n      " + written + "\n";
    assertThat(lines(policy))
        .singleElement()
        .asString()
        .startsWith("linter.yaml:6:")
        .contains(": error: the parameter ", fact, remedy)
        .endsWith("[schema.bad-value]");
  }

  /** What is wrong in a policy is told at its place, whatever its own levels say. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "adress.gap: {level: note} | 4:3: error: there is no rule \"adress.gap\" | write \"address.gap\"",
        "weather: {level: note} | 4:3: error: there is no rule \"weather\" | delete it",
        "conductors.ground: {parameters: {lnaded: head}} | 4:36: error: there is no parameter of"
            + " conductors.ground \"lnaded\" | write \"landed\"",
        "address.gap: {parameters: {landed: head}} | 4:30: error: there is no parameter of address.gap"
            + " \"landed\" | delete it",
        "address.gap: {level: eror} | 4:24: error: \"level\" cannot be \"eror\" | write error",
        "address.gap: {levle: error} | 4:17: error: unknown key \"levle\" | write \"level\"",
        "address.gap: none | 4:16: error: \"address.gap\" is \"none\" | [schema.wrong-type]",
        "address.gap: {level: note}, address.gap: {level: none} | 4:32: error: the key \"address.gap\""
            + " is written twice | keep one"
      })
  void faultsInTheRules(String rule, String start, String contained) throws IOException {
    String text =
        HEAD + (rule.contains("}, ") ? "rules:\n  {" + rule + "}\n" : "rules:\n  " + rule + "\n");
    assertThat(lines(text))
        .singleElement()
        .asString()
        .startsWith("linter.yaml:" + start)
        .contains(contained);
  }

  @ParameterizedTest
  @CsvSource({
    "'', 1:1: error, schema.wrong-type",
    "'# nothing yet\n', 1:1: error, schema.wrong-type",
    "'format: 2\nrule-set: 1\n', 1:9: error, schema.bad-value",
    "'format: 1\n', 1:1: error, schema.missing-key",
    "'format: 1\nrule-set: 0\n', 2:11: error, schema.out-of-range",
    "'format: 1\nrule-set: 7\n', 2:11: error, schema.out-of-range",
    "'format: 1\nrule-set: one\n', 2:11: error, schema.wrong-type",
    "'format: 1\nrule-set: [1\n', 2:11: error, yaml.syntax",
    "'format: 1\nrule-set: 1\n---\nformat: 1\n', 3:1: error, yaml.several-documents",
    "'format: 1\nrule-set: 1\nrule: {}\n', 3:1: error, schema.unknown-key",
    "'format: 1\nrule-set: 1\nbaseline: [a]\n', 3:11: error, schema.wrong-type"
  })
  void faultsInTheFile(String policy, String start, String rule) throws IOException {
    assertThat(lines(policy))
        .singleElement()
        .asString()
        .startsWith("linter.yaml:" + start)
        .endsWith("[" + rule + "]");
  }

  @Test
  void whatIsWrongInAPolicyHasNoEffectOnTheRest() throws IOException {
    String policy = HEAD + "rules: {adress.gap: {level: note}, address.gap: {level: note}}\n";
    assertThat(lines(policy, GAP))
        .anyMatch(line -> line.contains(": note: ") && line.endsWith("[address.gap]"))
        .hasSize(2);
    assertThat(lines("format: 1\nrule-set: [1\n", GAP))
        .anyMatch(line -> line.contains(": error: ") && line.endsWith("[address.gap]"))
        .hasSize(2);
  }

  @Test
  void aPolicyInAnotherEncodingIsTold() throws IOException {
    assertThat(lines(check(HEAD.getBytes(UTF_16), Example.SITE, 9)))
        .singleElement()
        .asString()
        .startsWith("linter.yaml:1:1: error: ")
        .endsWith("[file.encoding]");
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "baseline: linter-baseline.jsonl\n", "rules: {}\n"})
  void policiesWithoutAFault(String rest) throws IOException {
    assertThat(lines(HEAD + rest)).isEmpty();
  }
}
