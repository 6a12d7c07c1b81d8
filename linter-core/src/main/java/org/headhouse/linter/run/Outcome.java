package org.headhouse.linter.run;

import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/**
 * How a run ended.
 *
 * @param failed the results that reach the level which fails it
 * @param toolErrors what the tool itself could not do
 */
public record Outcome(List<Result> failed, List<Notification> toolErrors) {
  public Outcome {
    failed = List.copyOf(failed);
    toolErrors = List.copyOf(toolErrors);
  }

  /** The outcome of a check. */
  public static Outcome of(CheckReport report, Level failing) {
    return new Outcome(report.at(failing), report.failures());
  }

  /** The outcome where only errors of the tool count. */
  public static Outcome of(List<Notification> notifications) {
    return new Outcome(List.of(), notifications.stream().filter(Notification::isFailure).toList());
  }
}
