package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code yaml.duplicate-key}: checked by the YAML reader. */
public final class DuplicateKey implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation("yaml.duplicate-key", "A key stands once in its block.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
