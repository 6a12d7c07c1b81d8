package org.headhouse.linter.rules.suppression;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code suppression.unused}: checked by the façade, once all rules ran. */
public final class Unused implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "suppression.unused", "A suppression has something to suppress.", Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
