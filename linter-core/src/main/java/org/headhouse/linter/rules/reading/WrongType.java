package org.headhouse.linter.rules.reading;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code schema.wrong-type}: checked by the published schema. */
public final class WrongType implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "schema.wrong-type",
          "A value is of the kind that its key needs: text, number, truth value, list or block.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
