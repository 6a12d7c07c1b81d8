package org.headhouse.linter;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.headhouse.linter.batch.CheckRun;
import org.headhouse.linter.batch.FileTask;
import org.headhouse.linter.check.FileOutcome;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.settings.LinterContext;
import org.headhouse.linter.stability.Internal;

/**
 * The outcome of a check.
 *
 * @param results in the order of files and places, suppressed ones included
 * @param notifications what the tool itself could not do
 * @param files how many files were checked, device types and policy not counted
 * @param units how many units their chains have
 * @param rules all rules that the linter knows
 * @param absent what the baseline has and the check did not find
 * @param settings the files that apply to all sites, as they are called in results
 */
public record CheckReport(
    List<Result> results,
    List<Notification> notifications,
    int files,
    int units,
    List<RuleDescriptor> rules,
    List<AbsentResult> absent,
    Set<String> settings) {

  @Internal
  public CheckReport {
    results = List.copyOf(results);
    notifications = List.copyOf(notifications);
    rules = List.copyOf(rules);
    absent = List.copyOf(absent);
    settings = Set.copyOf(settings);
  }

  /** The report on all files. */
  static CheckReport of(LinterContext context, CheckRun.Outcome outcome) {
    return new CheckReport(
        context.shown(outcome.results()),
        outcome.notifications(),
        outcome.files(),
        outcome.units(),
        context.rules().descriptors(),
        outcome.absent(),
        context.settingsNames());
  }

  /** The report on one file alone. */
  static CheckReport of(LinterContext context, FileTask.Outcome<FileOutcome> checked) {
    List<Notification> notifications = new ArrayList<>();
    if (checked.notification() != null) {
      notifications.add(checked.notification());
    }
    FileOutcome outcome = checked.value();
    if (outcome != null) {
      notifications.addAll(outcome.notifications());
    }
    return new CheckReport(
        outcome == null ? List.of() : context.shown(outcome.results()),
        notifications,
        1,
        outcome == null ? 0 : outcome.units(),
        context.rules().descriptors(),
        List.of(),
        context.settingsNames());
  }

  /**
   * The same report without what concerns other sites only. A result stays if one of its related
   * locations is in one of the files: two sites may clash because the other one changed. What is
   * wrong in the files that apply to all sites stays as well: rules that need them may be silent.
   *
   * @param names of files, as they are called in results
   */
  public CheckReport only(Set<String> names) {
    return new CheckReport(
        results.stream().filter(result -> concerns(result, names)).toList(),
        notifications.stream()
            .filter(one -> one.file() == null || concerns(one.file(), names))
            .toList(),
        files,
        units,
        rules,
        absent.stream().filter(one -> names.contains(one.file())).toList(),
        settings);
  }

  private boolean concerns(String file, Set<String> names) {
    return names.contains(file) || settings.contains(file);
  }

  private boolean concerns(Result result, Set<String> names) {
    return concerns(result.location().file(), names)
        || result.related().stream().anyMatch(related -> names.contains(related.location().file()));
  }

  /**
   * The results of a level or a more severe one that are neither suppressed nor in the baseline.
   */
  public List<Result> at(Level level) {
    return results.stream()
        .filter(result -> !result.suppressed() && !result.known())
        .filter(result -> result.level().reaches(level))
        .toList();
  }

  /** What kept the linter from looking: a site that is meant may be wrong without a result. */
  public List<Notification> failures() {
    return notifications.stream().filter(Notification::isFailure).toList();
  }

  /**
   * Whether a site was checked, without a failure of the linter itself, and without a result of the
   * level or a more severe one that is new and not suppressed. With {@link Level#NONE} only
   * failures count. A check of no site at all does not pass: its program may have looked for them
   * in the wrong place.
   */
  public boolean passes(Level failing) {
    return files > 0 && at(failing).isEmpty() && failures().isEmpty();
  }

  /** The same report with more notifications. */
  CheckReport with(List<Notification> more) {
    return new CheckReport(
        results,
        Stream.concat(notifications.stream(), more.stream()).toList(),
        files,
        units,
        rules,
        absent,
        settings);
  }

  /** The results that are in the baseline. */
  public List<Result> known() {
    return results.stream().filter(Result::known).toList();
  }
}
