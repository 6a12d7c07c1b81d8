package org.headhouse.linter.rules.suppression;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code suppression.expired}: checked by the façade, once all rules ran. */
public final class Expired implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("suppression.expired", "A suppression has not ended.", Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
