package org.headhouse.linter;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.ComparedResults;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.check.RuleCatalogue;
import org.headhouse.linter.policy.Policy;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;

/** Puts the outcomes of single files together, in their order. */
final class ReportBuilder {
  private final RuleCatalogue rules;
  private final List<Result> results;
  private final List<Notification> notifications = new ArrayList<>();
  private final GuardedClashes clashes;
  private final @Nullable Baseline baseline;
  private final Set<String> checked = new HashSet<>();
  private int files;
  private int units;

  ReportBuilder(
      RuleCatalogue rules,
      Policy policy,
      List<Result> settingsResults,
      @Nullable Baseline baseline) {
    this.rules = rules;
    this.baseline = baseline;
    this.results = new ArrayList<>(settingsResults);
    this.clashes = new GuardedClashes(rules, policy);
  }

  void add(SingleFile.Attempt<FileOutcome> attempt) {
    files++;
    if (baseline != null) {
      checked.add(attempt.path());
    }
    if (attempt.trouble() != null) {
      notifications.add(attempt.trouble());
    }
    if (attempt.outcome() != null) {
      add(attempt.outcome());
    }
  }

  private void add(FileOutcome outcome) {
    units += outcome.units();
    results.addAll(outcome.results());
    notifications.addAll(outcome.notifications());
    results.addAll(clashes.of(outcome, notifications));
  }

  int files() {
    return files;
  }

  CheckReport build() {
    results.sort(Result.ORDER);
    ComparedResults compared =
        baseline == null
            ? new ComparedResults(results, List.of())
            : baseline.compare(results, checked, unsure());
    return new CheckReport(
        compared.results(), notifications, files, units, rules.descriptors(), compared.absent());
  }

  /** Files in which something kept rules from looking. */
  private Set<String> unsure() {
    Set<String> unsure = new HashSet<>();
    results.stream()
        .filter(result -> result.identity() == null)
        .forEach(result -> unsure.add(result.location().file()));
    notifications.stream().map(Notification::file).filter(Objects::nonNull).forEach(unsure::add);
    return unsure;
  }
}
