package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.source.Region;

/** Gives findings the level that the policy has for their rule. */
final class LevelAssigner {
  /** About what a file of 255 units gives in which everything is wrong. */
  private static final int MOST_REPORTED = 5000;

  private final RuleCatalogue rules;
  private final Policy policy;

  /** The rule on keys that are not known. */
  static final String UNKNOWN_KEY = "schema.unknown-key";

  private final boolean lasting;

  /**
   * @param lasting whether a baseline may hold the results of rules that no other rule relies on
   */
  LevelAssigner(RuleCatalogue rules, Policy policy, boolean lasting) {
    this.rules = rules;
    this.policy = policy;
    this.lasting = lasting;
  }

  /**
   * The results of findings in one file, in order: without those of rules that are off, and at most
   * as many as anybody reads.
   */
  List<Result> results(List<Finding> findings, Locations locations) {
    List<Result> results = new ArrayList<>();
    for (Finding finding : findings.size() > MOST_REPORTED ? first(findings) : findings) {
      RuleDescriptor rule = rule(finding);
      Level level = level(finding, rule);
      if (level != Level.NONE) {
        results.add(
            lasting && !rule.foundation() && !isMisspelt(finding)
                ? locations.lasting(finding, level)
                : locations.result(finding, level));
      }
    }
    results.sort(Result.ORDER);
    return results;
  }

  /** What stands under a misspelt key is not missing to other rules, so they rely on it. */
  private static boolean isMisspelt(Finding finding) {
    return finding.rule().equals(UNKNOWN_KEY) && finding.fix() != null;
  }

  private static List<Finding> first(List<Finding> findings) {
    List<Finding> first = new ArrayList<>(findings);
    first.sort(Comparator.comparing(finding -> finding.place().region()));
    first.subList(MOST_REPORTED, first.size()).clear();
    first.add(
        Finding.of(
            "file.too-large",
            Region.START_OF_FILE,
            new Message(
                "the file has "
                    + findings.size()
                    + " faults, of which the first "
                    + MOST_REPORTED
                    + " are reported",
                "nobody reads more of them",
                "fix those, and check again")));
    return first;
  }

  private RuleDescriptor rule(Finding finding) {
    RuleDescriptor rule = rules.get(finding.rule());
    if (rule == null) {
      throw new IllegalStateException("no rule " + finding.rule() + " in the list of rules");
    }
    return rule;
  }

  /** A finding that is milder than its rule stays milder, whatever the policy says. */
  private Level level(Finding finding, RuleDescriptor rule) {
    Level level = policy.level(rule);
    Level milder = finding.level();
    return milder == null ? level : level.atMost(milder);
  }
}
