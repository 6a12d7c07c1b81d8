package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RepositoryRule;
import org.jspecify.annotations.Nullable;

/** Finds keys that two files share although a rule wants them unique. For one thread. */
public final class UniquenessCheck {
  private final Map<String, RepositoryRule> rules = new HashMap<>();
  private final Map<String, Map<String, Location>> seen = new HashMap<>();
  private final Policy policy;
  private final RuleCatalogue catalogue;

  public UniquenessCheck(RuleCatalogue catalogue, Policy policy) {
    this.policy = policy;
    this.catalogue = catalogue;
    catalogue.repositoryRules().forEach(rule -> rules.put(catalogue.of(rule).id(), rule));
  }

  /**
   * The results of keys that earlier files have; files are given in their order.
   *
   * @param failures gets a notification for each rule that fails
   */
  // A rule may come from anywhere, so whatever it throws must not end the run.
  public List<Result> add(FileOutcome outcome, List<Notification> failures) {
    List<Result> results = new ArrayList<>();
    for (FileOutcome.Key key : outcome.keys()) {
      try {
        Result result = add(key);
        if (result != null) {
          results.add(result);
        }
      } catch (Throwable failure) {
        failures.add(RuleFailure.of(key.rule(), key.location().file(), failure));
      }
    }
    return results;
  }

  private @Nullable Result add(FileOutcome.Key key) {
    Location first =
        seen.computeIfAbsent(key.rule(), rule -> new HashMap<>())
            .putIfAbsent(key.text(), key.location());
    RepositoryRule rule = rules.get(key.rule());
    if (first == null || rule == null) {
      return null;
    }
    Level level = policy.level(catalogue.of(rule));
    return level == Level.NONE ? null : result(rule, key, first, level);
  }

  private static Result result(
      RepositoryRule rule, FileOutcome.Key key, Location first, Level level) {
    return new Result(
        key.rule(),
        level,
        Objects.requireNonNull(
            rule.clash(key.text(), first.file(), key.location().file()), "it has no message"),
        key.location(),
        "",
        null,
        List.of(
            new RelatedLocation(
                first, Objects.requireNonNull(rule.firstUse(key.text()), "it has no first use"))),
        key.suppression(),
        key.identity(),
        null,
        null);
  }
}
