package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code schema.bad-quantity}: checked by the published schema. */
public final class BadQuantity implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation(
          "schema.bad-quantity",
          "A quantity is a number with one of the units that its key allows.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
