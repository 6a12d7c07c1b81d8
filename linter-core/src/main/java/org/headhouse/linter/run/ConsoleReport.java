package org.headhouse.linter.run;

import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.report.ResultCounts;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;

/** Prints a report on a console. */
public final class ConsoleReport {
  private static final int MOST_ABSENT = 20;

  private final Console console;
  private final Level printed;

  /**
   * @param printed the mildest level that is printed
   */
  public ConsoleReport(Console console, Level printed) {
    this.console = console;
    this.printed = printed;
  }

  /** Prints all of a report but the absent results. */
  public void print(CheckReport report) {
    printFound(report);
    ResultCounts counts = new ResultCounts();
    counts.add(report.results());
    printCounts(counts, report.files(), report.units());
  }

  /**
   * Prints how many results there are, and what can be done about them.
   *
   * @param files how many sites there are
   * @param units how many units they have
   */
  public void printCounts(ResultCounts counts, int files, int units) {
    counts.lines(files, units).forEach(line -> console.found(Level.NOTE, line));
    ParameterNames called = console.called();
    List<String> fixes = counts.fixes(called.turnedOn("write"), called.typed("fixes", "proposed"));
    fixes.forEach(line -> console.found(Level.NOTE, line));
    counts
        .brokenRule()
        .ifPresent(
            rule ->
                console.found(
                    Level.NOTE,
                    "What a rule asks for, with an example: " + console.rulePageCall(rule)));
  }

  /** Prints the results and notifications of a report, without a summary. */
  public void printFound(CheckReport report) {
    new PrintedResults(console).print(report.at(printed));
    print(report.notifications());
  }

  /** Prints the results of the baseline that were not found. */
  public void printAbsent(List<AbsentResult> absent) {
    if (!absent.isEmpty()) {
      int times = absent.stream().mapToInt(AbsentResult::times).sum();
      console.found(
          Level.NOTE,
          (times == 1
                  ? "1 result of the baseline is gone"
                  : times + " results of the baseline are gone")
              + ": write the baseline again, so that none can come back unseen:");
      absent.stream()
          .limit(MOST_ABSENT)
          .forEach(one -> console.found(Level.NOTE, "  " + TextReport.printable(one.text())));
      if (absent.size() > MOST_ABSENT) {
        console.found(Level.NOTE, "  and " + (absent.size() - MOST_ABSENT) + " more");
      }
    }
  }

  /** Prints notifications, which are about the tool itself. */
  public void print(List<Notification> notifications) {
    for (Notification notification : notifications) {
      console.report(notification.level(), TextReport.headline(notification));
    }
  }
}
