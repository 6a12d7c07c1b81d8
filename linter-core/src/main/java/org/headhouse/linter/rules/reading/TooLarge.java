package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code file.too-large}: checked by the reading of a file. */
public final class TooLarge implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation(
          "file.too-large", "A file stays within the limits of size, depth and number of values.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
