package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code schema.out-of-range}: checked by the published schema. */
public final class OutOfRange implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation(
          "schema.out-of-range", "A number, a text or a list is within its limits.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
