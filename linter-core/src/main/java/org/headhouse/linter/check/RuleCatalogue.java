package org.headhouse.linter.check;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.headhouse.linter.rule.ChangeRule;
import org.headhouse.linter.rule.EngineRule;
import org.headhouse.linter.rule.RepositoryRule;
import org.headhouse.linter.rule.Rule;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.jspecify.annotations.Nullable;

/** All rules of a run, each id once. */
public final class RuleCatalogue {
  private final Map<String, RuleDescriptor> descriptors = new LinkedHashMap<>();
  private final Map<String, Rule> byId = new LinkedHashMap<>();

  /** As each rule gave it once: what a rule says later may fail, or differ. */
  private final IdentityHashMap<Rule, RuleDescriptor> known = new IdentityHashMap<>();

  private final List<SiteRule> siteRules = new ArrayList<>();
  private final List<RepositoryRule> repositoryRules = new ArrayList<>();
  private final List<ChangeRule> changeRules = new ArrayList<>();

  /**
   * @throws IllegalArgumentException for an id that two rules have, for a rule without a
   *     descriptor, and for one of several kinds
   */
  public RuleCatalogue(List<Rule> rules) {
    for (Rule rule : rules) {
      RuleDescriptor descriptor = descriptor(rule);
      Rule other = byId.putIfAbsent(descriptor.id(), rule);
      if (other != null) {
        throw new IllegalArgumentException(
            "two rules have the id "
                + descriptor.id()
                + ": "
                + other.getClass().getName()
                + " and "
                + rule.getClass().getName()
                + "; rename or remove one of them");
      }
      descriptors.put(descriptor.id(), descriptor);
      known.put(rule, descriptor);
      requireOneKind(rule);
      if (rule instanceof SiteRule siteRule) {
        siteRules.add(siteRule);
      }
      if (rule instanceof RepositoryRule repositoryRule) {
        repositoryRules.add(repositoryRule);
      }
      if (rule instanceof ChangeRule changeRule) {
        changeRules.add(changeRule);
      }
    }
  }

  // A rule may come from anywhere, and may make its descriptor only now.
  private static RuleDescriptor descriptor(Rule rule) {
    try {
      return Objects.requireNonNull(rule.descriptor(), "it has none");
    } catch (Throwable failure) {
      throw new IllegalArgumentException(
          "the rule "
              + rule.getClass().getName()
              + " has no descriptor: "
              + RuleFailure.said(failure),
          failure);
    }
  }

  private static void requireOneKind(Rule rule) {
    long kinds =
        Stream.<Predicate<Rule>>of(
                EngineRule.class::isInstance,
                one -> one instanceof SiteRule || one instanceof RepositoryRule,
                ChangeRule.class::isInstance)
            .filter(kind -> kind.test(rule))
            .count();
    if (kinds > 1) {
      throw new IllegalArgumentException(
          "the rule "
              + rule.getClass().getName()
              + " is of "
              + kinds
              + " kinds, of which one would be checked: make a rule of each");
    }
  }

  /** What is known of each rule, in the order of the list. */
  public List<RuleDescriptor> descriptors() {
    return List.copyOf(descriptors.values());
  }

  /** The rules, in the order of the list. */
  public List<Rule> rules() {
    return List.copyOf(byId.values());
  }

  /** The ids. */
  public Set<String> ids() {
    return descriptors.keySet();
  }

  /** What is known of a rule of this list. */
  public RuleDescriptor of(Rule rule) {
    return Objects.requireNonNull(known.get(rule), "the rule is not in the list");
  }

  /** The rule of an id, or null for an id that no rule has. */
  public @Nullable Rule rule(String id) {
    return byId.get(id);
  }

  /** What is known of a rule, or null for an id that no rule has. */
  public @Nullable RuleDescriptor get(String id) {
    return descriptors.get(id);
  }

  List<SiteRule> siteRules() {
    return siteRules;
  }

  /** The ids of the rules that compare a site with an earlier state. */
  public Set<String> idsOnChanges() {
    Set<String> ids = new HashSet<>();
    changeRules().forEach(rule -> ids.add(of(rule).id()));
    return ids;
  }

  List<ChangeRule> changeRules() {
    return changeRules;
  }

  /** The rules over all sites. */
  public List<RepositoryRule> repositoryRules() {
    return repositoryRules;
  }
}
