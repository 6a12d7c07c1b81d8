package org.headhouse.linter.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SuppressionEntry;
import org.headhouse.linter.source.SpellingSuggester;
import org.jspecify.annotations.Nullable;

/** Applies the suppressions of a site to its results, and reports those that have no effect. */
final class Suppressions {
  private final Site site;
  private final RuleCatalogue rules;
  private final boolean compared;
  private final List<SuppressionEntry> active = new ArrayList<>();
  private final List<SuppressionEntry> expired = new ArrayList<>();
  private final Set<SuppressionEntry> used = Collections.newSetFromMap(new IdentityHashMap<>());
  private final List<Finding> findings = new ArrayList<>();
  private @Nullable SpellingSuggester suppressible;

  /**
   * @param compared whether rules on changes were run, so that a suppression of theirs can be
   *     unused
   */
  Suppressions(Site site, RuleCatalogue rules, LocalDate today, boolean compared) {
    this.compared = compared;
    this.site = site;
    this.rules = rules;
    site.suppressions().forEach(entry -> sort(entry, today));
  }

  private void sort(SuppressionEntry entry, LocalDate today) {
    String rule = entry.rule().orNull();
    if (rule == null
        || !entry.justification().isGiven()
        || entry.until().isFaulty()
        || entry.unit().isFaulty()) {
      return;
    }
    LocalDate until = entry.until().orNull();
    if (!isSuppressible(rule)) {
      findings.add(unknown(entry, rule));
    } else if (until != null && until.isBefore(today)) {
      expired.add(entry);
    } else {
      active.add(entry);
    }
  }

  private SpellingSuggester suppressible() {
    SpellingSuggester known = suppressible;
    if (known == null) {
      known =
          new SpellingSuggester(
              rules.ids().stream().filter(this::isSuppressible).sorted().toList());
      suppressible = known;
    }
    return known;
  }

  boolean isEmpty() {
    return site.suppressions().isEmpty();
  }

  private boolean isSuppressible(String id) {
    RuleDescriptor rule = rules.get(id);
    return rule != null && !rule.foundation() && !rule.subject().equals("suppression");
  }

  /** The result, suppressed where the site accepts it, or accepts it of every unit concerned. */
  Result apply(Result result) {
    Set<@Nullable String> units = new LinkedHashSet<>();
    for (Identity one : result.identities()) {
      units.add(one.unit());
    }
    Suppression suppression =
        units.size() > 1 ? ofAll(result.rule(), units) : of(result.rule(), result.unit());
    return suppression == null ? result : result.suppressedBy(suppression);
  }

  /** An entry for one of several units hides nothing of the others. */
  private @Nullable Suppression ofAll(String rule, Set<@Nullable String> units) {
    Suppression first = null;
    boolean all = true;
    Set<String> justifications = new LinkedHashSet<>();
    for (String unit : units) {
      Suppression one = of(rule, unit);
      if (one == null) {
        all = false;
      } else {
        first = first == null ? one : first;
        justifications.add(one.justification());
      }
    }
    return all && first != null
        ? new Suppression(String.join("; ", justifications), first.location())
        : null;
  }

  /**
   * What suppresses a rule's result.
   *
   * @param unit what the result is about, or null for the whole site
   */
  @Nullable Suppression of(String rule, @Nullable String unit) {
    for (SuppressionEntry entry : expired) {
      if (fits(entry, rule, unit)) {
        used.add(entry);
      }
    }
    for (SuppressionEntry entry : active) {
      if (fits(entry, rule, unit)) {
        used.add(entry);
        return new Suppression(
            entry.justification().or(""),
            Locations.location(site.source(), entry.place().region()));
      }
    }
    return null;
  }

  private static boolean fits(SuppressionEntry entry, String rule, @Nullable String unit) {
    return entry.rule().is(rule)
        && (entry.unit().isMissing() || entry.unit().is(unit == null ? "" : unit));
  }

  /** What is wrong with the suppressions, once all results were applied. */
  Collection<Finding> findings() {
    Set<String> items = new HashSet<>();
    site.items().forEach(item -> items.add(item.name().or("")));
    List<Finding> all = new ArrayList<>(findings);
    for (SuppressionEntry entry : active) {
      // A missing item is reported as such; once that is corrected, the entry may be needed.
      if (!used.contains(entry) && namesOneOf(items, entry) && wasRun(entry.rule().or(""))) {
        all.add(unused(entry, entry.rule().or("")));
      }
    }
    for (SuppressionEntry entry : expired) {
      all.add(expired(entry, entry.rule().or(""), used.contains(entry)));
    }
    return all;
  }

  private boolean wasRun(String rule) {
    return compared
        || rules.changeRules().stream().noneMatch(one -> one.descriptor().id().equals(rule));
  }

  private static boolean namesOneOf(Set<String> items, SuppressionEntry entry) {
    return entry.unit().isMissing() || items.contains(entry.unit().or(""));
  }

  private static Finding unused(SuppressionEntry entry, String rule) {
    return Finding.of(
        "suppression.unused",
        entry.rule().place(),
        new Message(
            "the suppression of \"" + rule + "\" has nothing to suppress",
            "it would hide the next mistake of that kind",
            "delete the entry"));
  }

  private static Finding expired(SuppressionEntry entry, String rule, boolean hid) {
    return Finding.of(
        "suppression.expired",
        entry.until().place(),
        new Message(
            "the suppression of \""
                + rule
                + "\" ended on "
                + entry.until().optional().map(LocalDate::toString).orElse(""),
            hid ? "the result that it hid counts again" : "it no longer hides anything",
            hid
                ? "fix the cause, or set a later date and give a reason that is still true"
                : "delete the entry"));
  }

  private Finding unknown(SuppressionEntry entry, String rule) {
    boolean known = rules.get(rule) != null;
    String remedy =
        suppressible()
            .suggest(rule)
            .filter(near -> !known)
            .map(near -> "write \"" + near + "\"")
            .orElse("delete the entry");
    return Finding.of(
        "suppression.unknown-rule",
        entry.rule().place(),
        new Message(
            known ? "\"" + rule + "\" cannot be suppressed" : "there is no rule \"" + rule + "\"",
            "the suppression has no effect",
            remedy));
  }
}
