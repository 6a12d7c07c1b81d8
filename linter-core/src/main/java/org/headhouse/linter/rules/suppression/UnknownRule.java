package org.headhouse.linter.rules.suppression;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code suppression.unknown-rule}: checked by the façade, once all rules ran. */
public final class UnknownRule implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "suppression.unknown-rule",
          "A suppression names a rule that there is and that may be suppressed.",
          Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
