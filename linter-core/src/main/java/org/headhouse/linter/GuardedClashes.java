package org.headhouse.linter;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.check.RepositoryClashes;
import org.headhouse.linter.check.RuleCatalogue;
import org.headhouse.linter.check.RuleFailure;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/** What the rules over all sites find, file by file; one that fails is told of. */
final class GuardedClashes {
  private final RepositoryClashes clashes;

  GuardedClashes(RuleCatalogue rules, Policy policy) {
    this.clashes = new RepositoryClashes(rules, policy);
  }

  // A rule may come from anywhere, so whatever it throws must not end the run.
  List<Result> of(FileOutcome outcome, List<Notification> troubles) {
    List<Result> results = new ArrayList<>();
    for (FileOutcome.Key key : outcome.keys()) {
      try {
        clashes.add(key).ifPresent(results::add);
      } catch (Throwable failure) {
        troubles.add(RuleFailure.of(key.rule(), key.location().file(), failure));
      }
    }
    return results;
  }
}
