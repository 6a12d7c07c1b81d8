package org.headhouse.linter.check;

import java.util.IdentityHashMap;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.RuleDescriptor;
import org.jspecify.annotations.Nullable;

/** The values of all parameters under one policy: each is read once, and not for every file. */
final class ParameterValues {
  private final Policy policy;
  private final IdentityHashMap<RuleDescriptor, IdentityHashMap<Parameter<?>, Object>> values =
      new IdentityHashMap<>();

  ParameterValues(RuleCatalogue rules, Policy policy) {
    this.policy = policy;
    for (RuleDescriptor rule : rules.descriptors()) {
      IdentityHashMap<Parameter<?>, Object> ofRule = new IdentityHashMap<>();
      rule.parameters().forEach(parameter -> read(rule, parameter, ofRule));
      values.put(rule, ofRule);
    }
  }

  /** A rule that cannot read its own parameter meets the failure again when it asks for it. */
  private void read(
      RuleDescriptor rule, Parameter<?> parameter, IdentityHashMap<Parameter<?>, Object> ofRule) {
    Object value;
    try {
      value = policy.value(rule, parameter);
    } catch (RuntimeException | LinkageError | StackOverflowError failure) {
      return;
    }
    ofRule.put(parameter, value);
  }

  /** The value of a parameter; also of one that the rule's descriptor does not list. */
  @SuppressWarnings("unchecked") // what was put in is the value of that very parameter
  <T> T value(RuleDescriptor rule, Parameter<T> parameter) {
    IdentityHashMap<Parameter<?>, Object> ofRule = values.get(rule);
    @Nullable Object known = ofRule == null ? null : ofRule.get(parameter);
    return known == null ? policy.value(rule, parameter) : (T) known;
  }
}
