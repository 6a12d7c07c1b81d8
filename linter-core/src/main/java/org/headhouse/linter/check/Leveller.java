package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleDescriptor;

/** Gives findings the level that the policy has for their rule. */
final class Leveller {
  private final RuleCatalogue rules;
  private final Policy policy;

  Leveller(RuleCatalogue rules, Policy policy) {
    this.rules = rules;
    this.policy = policy;
  }

  /** The results of findings in one file, in order; without those of rules that are off. */
  List<Result> results(List<Finding> findings, Locations locations) {
    List<Result> results = new ArrayList<>();
    for (Finding finding : findings) {
      Level level = level(finding);
      if (level != Level.NONE) {
        results.add(locations.result(finding, level));
      }
    }
    results.sort(Result.ORDER);
    return results;
  }

  /** A finding that is milder than its rule stays milder, whatever the policy says. */
  private Level level(Finding finding) {
    RuleDescriptor rule = rules.get(finding.rule());
    if (rule == null) {
      throw new IllegalStateException("no rule " + finding.rule() + " in the list of rules");
    }
    Level level = policy.level(rule);
    Level milder = finding.level();
    return milder == null ? level : level.atMost(milder);
  }
}
