package org.headhouse.linter.run;

import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.jspecify.annotations.Nullable;

/**
 * How a run ended.
 *
 * @param failed the results that reach the level which fails it
 * @param toolErrors what the tool itself could not do
 * @param refusal why nothing is made of what the user gave, or null
 */
public record Outcome(
    List<Result> failed, List<Notification> toolErrors, @Nullable Refusal refusal) {
  public Outcome {
    failed = List.copyOf(failed);
    toolErrors = List.copyOf(toolErrors);
  }

  /** The outcome of a run that could do all of its work. */
  public static Outcome good() {
    return new Outcome(List.of(), List.of(), null);
  }

  /** The outcome of a check. */
  public static Outcome of(CheckReport report, Level failing) {
    return new Outcome(report.at(failing), report.failures(), null);
  }

  /** The outcome where only errors of the tool count. */
  public static Outcome of(List<Notification> notifications) {
    return new Outcome(
        List.of(), notifications.stream().filter(Notification::isFailure).toList(), null);
  }

  /** The outcome where nothing is made of what the user gave. */
  public static Outcome of(Refusal refusal) {
    return new Outcome(List.of(), List.of(), refusal);
  }

  /** Whether nothing failed. */
  public boolean isGood() {
    return failed.isEmpty() && toolErrors.isEmpty() && refusal == null;
  }
}
