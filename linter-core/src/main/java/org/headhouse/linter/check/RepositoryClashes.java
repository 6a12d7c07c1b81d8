package org.headhouse.linter.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RepositoryRule;

/** Finds texts that two files share although a rule wants them unique. */
public final class RepositoryClashes {
  private final Map<String, RepositoryRule> rules = new HashMap<>();
  private final Map<String, Map<String, Location>> seen = new HashMap<>();
  private final Policy policy;
  private final RuleCatalogue catalogue;

  public RepositoryClashes(RuleCatalogue catalogue, Policy policy) {
    this.policy = policy;
    this.catalogue = catalogue;
    catalogue.repositoryRules().forEach(rule -> rules.put(catalogue.of(rule).id(), rule));
  }

  /** The result of a text that an earlier file has, in the order of the files. */
  public Optional<Result> add(FileOutcome.Key key) {
    Location first =
        seen.computeIfAbsent(key.rule(), rule -> new HashMap<>())
            .putIfAbsent(key.text(), key.location());
    RepositoryRule rule = rules.get(key.rule());
    if (first == null || rule == null) {
      return Optional.empty();
    }
    Level level = policy.level(catalogue.of(rule));
    return level == Level.NONE ? Optional.empty() : Optional.of(clash(rule, key, first, level));
  }

  private static Result clash(
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
