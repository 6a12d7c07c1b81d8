package org.headhouse.linter.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.rule.EngineRule;
import org.headhouse.linter.rule.Rule;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whoever knows a rule's id knows its class: {@code cable.too-long} is {@code CableTooLong}. */
class RuleNamesTest {
  static Stream<Rule> rulesWithAClass() {
    return BuiltInRules.all().stream().filter(rule -> !(rule instanceof EngineRule));
  }

  @ParameterizedTest
  @MethodSource("rulesWithAClass")
  void theClassIsNamedAfterTheId(Rule rule) {
    String id = rule.descriptor().id();
    String name =
        Arrays.stream(id.split("[.-]"))
            .map(word -> word.substring(0, 1).toUpperCase(Locale.ROOT) + word.substring(1))
            .collect(Collectors.joining());
    assertThat(rule.getClass().getName())
        .isEqualTo(
            BuiltInRules.class.getPackageName() + "." + rule.descriptor().subject() + "." + name);
  }
}
