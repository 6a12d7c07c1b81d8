package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code yaml.several-documents}: checked by the YAML reader. */
public final class SeveralDocuments implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation("yaml.several-documents", "A file holds one document.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
