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
 * @param troubles what kept the tool itself from looking at all of the sites
 */
public record Outcome(List<Result> failed, List<Notification> troubles) {
  public Outcome {
    failed = List.copyOf(failed);
    troubles = List.copyOf(troubles);
  }

  /** The outcome of a check. */
  public static Outcome of(CheckReport report, Level failing) {
    return new Outcome(report.at(failing), of(report.notifications()).troubles());
  }

  /** The outcome where only troubles count. */
  public static Outcome of(List<Notification> notifications) {
    return new Outcome(
        List.of(), notifications.stream().filter(one -> one.level() == Level.ERROR).toList());
  }

  /** Whether sites are broken, or something was in the way. */
  public boolean isClean() {
    return failed.isEmpty() && troubles.isEmpty();
  }
}
