package org.headhouse.linter.rules.reading;

import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.StageRule;

/** {@code file.encoding}: checked by the decoding of a file. */
public final class Encoding implements StageRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.foundation("file.encoding", "A file is UTF-8.");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }
}
