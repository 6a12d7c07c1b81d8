package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code schema.missing-key}: checked by the published schema. */
public final class MissingKey implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation("schema.missing-key", "Every key that the format needs is there.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
