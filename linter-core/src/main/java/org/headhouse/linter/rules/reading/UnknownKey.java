package org.headhouse.linter.rules.reading;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code schema.unknown-key}: checked by the published schema. */
public final class UnknownKey implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("schema.unknown-key", "Every key is one that the format has.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
