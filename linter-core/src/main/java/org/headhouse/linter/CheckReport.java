package org.headhouse.linter;

import java.util.List;
import java.util.Set;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.rule.RuleDescriptor;
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
 */
public record CheckReport(
    List<Result> results,
    List<Notification> notifications,
    int files,
    int units,
    List<RuleDescriptor> rules,
    List<AbsentResult> absent) {

  @Internal
  public CheckReport {
    results = List.copyOf(results);
    notifications = List.copyOf(notifications);
    rules = List.copyOf(rules);
    absent = List.copyOf(absent);
  }

  /**
   * The same report without what concerns other files only. A result stays if one of its related
   * locations is in one of the files: two sites may clash because the other one changed.
   *
   * @param names of files, as they are called in results
   */
  public CheckReport only(Set<String> names) {
    return new CheckReport(
        results.stream().filter(result -> concerns(result, names)).toList(),
        notifications.stream()
            .filter(one -> one.file() == null || names.contains(one.file()))
            .toList(),
        files,
        units,
        rules,
        absent.stream().filter(one -> names.contains(one.file())).toList());
  }

  private static boolean concerns(Result result, Set<String> names) {
    return names.contains(result.location().file())
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
   * Whether there is neither a result of a level or a more severe one that is new and not
   * suppressed, nor a failure of the linter itself. With {@link Level#NONE} only failures count.
   */
  public boolean passes(Level failing) {
    return at(failing).isEmpty() && failures().isEmpty();
  }

  /** The results that are in the baseline. */
  public List<Result> known() {
    return results.stream().filter(Result::known).toList();
  }
}
