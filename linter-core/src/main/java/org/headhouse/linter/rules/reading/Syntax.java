package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code yaml.syntax}: checked by the YAML reader. */
public final class Syntax implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation(
          "yaml.syntax", "A file is YAML that uses plain keys and the core types only.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
