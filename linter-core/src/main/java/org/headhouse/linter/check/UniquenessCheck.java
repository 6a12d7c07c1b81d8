package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Identity;
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
  private final Map<String, Map<String, Holders>> seen = new HashMap<>();
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
      try {
        Clash clash = clash(key);
        if (clash != null) {
          clashes.add(clash);
        }
      } catch (Throwable failure) {
        failures.add(RuleFailure.of(key.rule(), key.location().file(), failure));
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

  /** The files that have a key: where the first has it, and which sites the first ones are. */
  private static final class Holders {
    private static final int MOST = 8;

    // Not the key, whose identity knows the whole file.
    private final FirstUse first;
    private List<String> sites;

    Holders(FileOutcome.Key key) {
      first = new FirstUse(key.text(), key.location());
      sites = List.of(site(key));
    }

    void add(FileOutcome.Key key) {
      if (sites.size() < MOST) {
        List<String> more = new ArrayList<>(sites);
        more.add(site(key));
        sites = more;
      }
    }

    /** Of one id only the files tell which is which. */
    private static String site(FileOutcome.Key key) {
      String id = key.site();
      return id == null || id.equals(key.text()) ? key.location().file() : id;
    }
  }

  /** What the first file has that has a key, as it is written there. */
  private record FirstUse(String text, Location location) {}

  /**
   * A key that earlier files have too.
   *
   * @param sites those that had it first
   */
  private record Clash(
      RepositoryRule rule,
      RuleDescriptor descriptor,
      FileOutcome.Key key,
      FirstUse first,
      List<String> sites) {
    Cause asCause() {
      return new Cause(descriptor.id(), first.location().file());
    }

    boolean hasCauseIn(Set<Cause> causes) {
      return descriptor.yieldsTo().stream()
          .anyMatch(rule -> causes.contains(new Cause(rule, first.location().file())));
    }
  }

  /** A rule that reports something in common with a file, which explains what others would. */
  private record Cause(String rule, String firstFile) {}

  private @Nullable Clash clash(FileOutcome.Key key) {
    Map<String, Holders> holders = seen.computeIfAbsent(key.rule(), rule -> new HashMap<>());
    RepositoryRule rule = rules.get(key.rule());
    if (rule == null) {
      return null;
    }
    String compared = Objects.requireNonNull(rule.compared(key.text()), "it compares nothing");
    Holders before = holders.putIfAbsent(compared, new Holders(key));
    if (before == null) {
      return null;
    }
    Clash clash = new Clash(rule, catalogue.of(rule), key, before.first, before.sites);
    before.add(key);
    return clash;
  }

  private Result result(Clash clash) {
    RepositoryRule rule = clash.rule();
    FileOutcome.Key key = clash.key();
    FirstUse first = clash.first();
    return new Result(
        key.rule(),
        policy.level(clash.descriptor()).atMost(rule.level()),
        Objects.requireNonNull(
            rule.clash(key.text(), first.location().file(), key.location().file()),
            "it has no message"),
        key.location(),
        "",
        null,
        List.of(
            new RelatedLocation(
                first.location(),
                Objects.requireNonNull(rule.firstUse(first.text()), "it has no first use"))),
        key.suppression(),
        identities(key.identity().get(), clash.sites()),
        null,
        null);
  }

  /** One for each site that it clashes with, so that a clash with another one is new. */
  private static List<Identity> identities(Identity own, List<String> sites) {
    return sites.stream()
        .map(
            other ->
                new Identity(own.site(), own.at(), own.unit(), own.value(), own.graded(), other))
        .toList();
  }
}
