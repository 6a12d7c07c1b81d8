package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code schema.bad-value}: checked by the published schema. */
public final class BadValue implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation("schema.bad-value", "A value is one that its key allows.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
