package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.RuleDescriptor;
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
    List<Clash> clashes = new ArrayList<>();
    for (FileOutcome.Key key : outcome.keys()) {
      Clash clash = clash(key);
      if (clash != null) {
        clashes.add(clash);
      }
    }
    Set<Cause> causes = clashes.stream().map(Clash::asCause).collect(Collectors.toSet());
    List<Result> results = new ArrayList<>();
    for (Clash clash : clashes) {
      if (clash.hasCauseIn(causes)) {
        continue;
      }
      try {
        results.add(result(clash));
      } catch (Throwable failure) {
        failures.add(RuleFailure.of(clash.key().rule(), clash.key().location().file(), failure));
      }
    }
    return results;
  }

  /** A key that an earlier file has too. */
  private record Clash(
      RepositoryRule rule, RuleDescriptor descriptor, FileOutcome.Key key, Location first) {
    Cause asCause() {
      return new Cause(descriptor.id(), first.file());
    }

    boolean hasCauseIn(Set<Cause> causes) {
      return descriptor.yieldsTo().stream()
          .anyMatch(rule -> causes.contains(new Cause(rule, first.file())));
    }
  }

  /** A rule that reports something in common with a file, which explains what others would. */
  private record Cause(String rule, String firstFile) {}

  private @Nullable Clash clash(FileOutcome.Key key) {
    Location first =
        seen.computeIfAbsent(key.rule(), rule -> new HashMap<>())
            .putIfAbsent(key.text(), key.location());
    RepositoryRule rule = rules.get(key.rule());
    return first == null || rule == null ? null : new Clash(rule, catalogue.of(rule), key, first);
  }

  private Result result(Clash clash) {
    RepositoryRule rule = clash.rule();
    FileOutcome.Key key = clash.key();
    Location first = clash.first();
    return new Result(
        key.rule(),
        policy.level(clash.descriptor()).atMost(rule.level()),
        Objects.requireNonNull(
            rule.clash(key.text(), first.file(), key.location().file()), "it has no message"),
        key.location(),
        "",
        null,
        List.of(
            new RelatedLocation(
                first, Objects.requireNonNull(rule.firstUse(key.text()), "it has no first use"))),
        key.suppression(),
        key.identity().get(),
        null,
        null);
  }
}
