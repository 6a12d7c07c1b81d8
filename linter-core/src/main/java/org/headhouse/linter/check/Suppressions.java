package org.headhouse.linter.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.SuppressionEntry;
import org.headhouse.linter.source.Nearest;

/** Applies the suppressions of a site to its results, and tells of those that have no effect. */
final class Suppressions {
  private final Site site;
  private final Set<String> knownRules;
  private final LocalDate today;
  private final List<SuppressionEntry> active = new ArrayList<>();
  private final List<SuppressionEntry> used = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  Suppressions(Site site, Set<String> knownRules, LocalDate today) {
    this.site = site;
    this.knownRules = knownRules;
    this.today = today;
    site.suppressions().forEach(this::sort);
  }

  private void sort(SuppressionEntry entry) {
    String rule = entry.rule().orNull();
    if (rule == null
        || !entry.justification().isGiven()
        || entry.until().isFaulty()
        || entry.unit().isFaulty()) {
      return;
    }
    LocalDate until = entry.until().orNull();
    if (!knownRules.contains(rule) || rule.startsWith("suppression.")) {
      findings.add(unknown(entry, rule));
    } else if (until != null && until.isBefore(today)) {
      findings.add(expired(entry, rule, until));
    } else {
      active.add(entry);
    }
  }

  /** The result, suppressed where the site accepts it. */
  Result apply(Result result) {
    for (SuppressionEntry entry : active) {
      if (entry.rule().is(result.rule())
          && (entry.unit().isMissing()
              || entry.unit().is(result.unit() == null ? "" : result.unit()))) {
        used.add(entry);
        return result.suppressedBy(
            new Suppression(
                entry.justification().or(""),
                Locations.location(site.source(), entry.place().region())));
      }
    }
    return result;
  }

  /** What is to be told once every result was applied. */
  Collection<Finding> findings() {
    List<Finding> all = new ArrayList<>(findings);
    for (SuppressionEntry entry : active) {
      if (!used.contains(entry)) {
        all.add(unused(entry, entry.rule().or("")));
      }
    }
    return all;
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

  private static Finding expired(SuppressionEntry entry, String rule, LocalDate until) {
    return Finding.of(
        "suppression.expired",
        entry.until().place(),
        new Message(
            "the suppression of \"" + rule + "\" ended on " + until,
            "its results count again",
            "mend what it hid, or write a later date with a reason that still holds"));
  }

  private Finding unknown(SuppressionEntry entry, String rule) {
    boolean never = rule.startsWith("suppression.") && knownRules.contains(rule);
    String remedy =
        Nearest.to(rule, knownRules.stream().sorted().toList())
            .filter(near -> !near.startsWith("suppression."))
            .map(near -> "write \"" + near + "\"")
            .orElse("delete the entry");
    return Finding.of(
        "suppression.unknown-rule",
        entry.rule().place(),
        new Message(
            never ? "\"" + rule + "\" cannot be suppressed" : "there is no rule \"" + rule + "\"",
            "the suppression has no effect",
            never ? "delete the entry" : remedy));
  }
}
