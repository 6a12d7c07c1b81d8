package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code schema.wrong-type}: checked by the published schema. */
public final class WrongType implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation(
          "schema.wrong-type",
          "A value is of the kind that its key needs: text, number, truth value, list or block.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
