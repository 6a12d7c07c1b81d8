package org.headhouse.linter.rules.reading;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code yaml.ambiguous-scalar}: checked by the façade, which knows what is read. */
public final class AmbiguousScalar implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "yaml.ambiguous-scalar",
          "A value means the same to readers of YAML 1.1 and 1.2.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
