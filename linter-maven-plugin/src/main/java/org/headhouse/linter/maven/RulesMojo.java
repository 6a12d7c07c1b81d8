package org.headhouse.linter.maven;

import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.goal.RulesRequest;
import org.jspecify.annotations.Nullable;

/** Lists the rules, or shows the page of one rule. */
@Mojo(name = "rules", requiresProject = false, threadSafe = true)
public final class RulesMojo extends LinterMojo {
  /** The id of the rule to show; without it, all are listed. */
  @Parameter(property = "linter.rule")
  private @Nullable String rule;

  @Override
  RulesRequest request() {
    return new RulesRequest(rule);
  }
}
