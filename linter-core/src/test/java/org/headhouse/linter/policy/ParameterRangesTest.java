package org.headhouse.linter.policy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rules.BuiltInRules;
import org.headhouse.linter.rules.RulePages;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A parameter that cannot be meant silences no rule: it is a result, and the default holds. */
class ParameterRangesTest {
  @ParameterizedTest
  @CsvSource({
    "stub.too-long, velocity-factor, 0.4, 1, 0, 78",
    "termination.mismatch, most, 0 %, 50 %, 51 %, 900 %",
    "traffic.busy, most, 1 %, 100 %, 0 %, 101 %",
    "traffic.busy, turnaround, 1 ms, 10 s, 0 ms, 11 s",
    "traffic.busy, processing, 1 ms, 10 s, 0 s, 3 min",
    "bias.weak, margin, 0 mV, 1.5 V, 1501 mV, 200 V",
    "bias.weak, resistors, 0 %, 20 %, 21 %, 99 %",
    "bias.weak, supply, 0 %, 20 %, 21 %, 99 %",
    "bias.weak, terminators, 0 %, 20 %, 21 %, 99 %",
    "bias.weak, cable, 0 %, 20 %, 21 %, 99 %",
    "signal.weak, margin, 0 mV, 1.5 V, 1501 mV, 200 V",
    "outdoor.too-old, lost, 0, 100, 101, 999",
    "commissioning.measured-off, tolerance, 0 %, 20 %, 21 %, 99 %",
    "commissioning.retest-due, every, 1 day, 30 years, 31 years, 9999 months"
  })
  void ranges(String rule, String name, String least, String most, String beyond, String far)
      throws IOException {
    assertThat(RulePages.text(rule).orElseThrow())
        .contains(", from `" + least + "` to `" + most + "`): ");
    assertThat(faults(rule, name, least)).isEmpty();
    assertThat(faults(rule, name, most)).isEmpty();
    for (String written : List.of(beyond, far)) {
      assertThat(faults(rule, name, written))
          .singleElement()
          .satisfies(
              fault -> {
                assertThat(fault.rule()).isEqualTo("schema.bad-value");
                assertThat(fault.message().fact())
                    .isEqualTo("the parameter \"" + name + "\" cannot be \"" + written + "\"");
              });
    }
  }

  private static List<Result> faults(String rule, String name, String written) throws IOException {
    String policy =
        "format: 1\nrule-set: 1\nrules: {"
            + rule
            + ": {parameters: {"
            + name
            + ": '"
            + written
            + "'}}}\n";
    return SiteLinter.builder()
        .policy(SiteInput.text("linter.yaml", policy))
        .build()
        .checkText("example.yaml", Example.SITE)
        .results()
        .stream()
        .filter(result -> result.location().file().equals("linter.yaml"))
        .toList();
  }

  /** Every parameter of a quantity has an end: nothing is so great that it is meant. */
  @Test
  void everyQuantityHasAnEnd() {
    Set<String> endless = new TreeSet<>();
    for (Rule rule : BuiltInRules.all()) {
      for (Parameter<?> parameter : rule.descriptor().parameters()) {
        ParameterType<?> type = parameter.type();
        boolean taken =
            Stream.of("99999", "999", "99999 %", "99999 V", "99999 m", "99999 s", "9999 years")
                .anyMatch(written -> type.parse(written).isPresent());
        boolean isQuantity = type.words().isEmpty() && type.items().isEmpty();
        if (isQuantity && taken) {
          endless.add(rule.descriptor().id() + " " + parameter.name());
        }
      }
    }
    assertThat(endless).containsExactly("name.pattern in-words");
  }
}
