package org.headhouse.linter.maven;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugin.logging.Log;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/** Tells a report in the log of the build, and ends the build where it must. */
final class ConsoleReport {
  private static final int REPEATED = 5;

  private final Log log;
  private final Level printed;

  ConsoleReport(Log log, Level printed) {
    this.log = log;
    this.printed = printed;
  }

  void print(CheckReport report) {
    List<Result> shown = report.at(printed);
    for (Result result : shown) {
      TextReport.lines(result).forEach(line -> print(result.level(), line));
    }
    print(report.notifications());
    TextReport.summary(report.results(), report.files(), report.units()).forEach(log::info);
  }

  /** Tells what a baseline knows and nobody found. */
  void printAbsent(List<AbsentResult> absent) {
    if (!absent.isEmpty()) {
      int times = absent.stream().mapToInt(AbsentResult::times).sum();
      log.info(
          (times == 1
                  ? "1 result of the baseline is gone"
                  : times + " results of the baseline are gone")
              + ": write it anew with the goal \"baseline\", so that none can come back unseen:");
      absent.forEach(one -> log.info("  " + TextReport.printable(one.text())));
    }
  }

  /** Tells what the tool itself has to say. */
  void print(List<Notification> notifications) {
    for (Notification notification : notifications) {
      print(notification.level(), text(notification));
    }
  }

  private static String text(Notification notification) {
    return notification.file() == null
        ? notification.text()
        : notification.file() + ": " + notification.text();
  }

  private void print(Level level, String line) {
    switch (level) {
      case ERROR -> log.error(line);
      case WARNING -> log.warn(line);
      case NOTE, NONE -> log.info(line);
    }
  }

  /** A broken site fails the build; a trouble of the tool itself is an error of the build. */
  void failOn(CheckReport report, Level failing)
      throws MojoFailureException, MojoExecutionException {
    List<Result> failed = report.at(failing);
    if (!failed.isEmpty()) {
      throw new MojoFailureException(repeated(failed));
    }
    failOnTroubles(report.notifications());
  }

  /** A trouble of the tool itself is an error of the build. */
  static void failOnTroubles(List<Notification> notifications) throws MojoExecutionException {
    List<Notification> troubles =
        notifications.stream().filter(one -> one.level() == Level.ERROR).toList();
    if (!troubles.isEmpty()) {
      throw new MojoExecutionException(
          troubles.stream()
              .limit(REPEATED)
              .map(ConsoleReport::text)
              .collect(Collectors.joining("\n")));
    }
  }

  private static String repeated(List<Result> failed) {
    String first =
        failed.stream().limit(REPEATED).map(TextReport::headline).collect(Collectors.joining("\n"));
    int more = failed.size() - REPEATED;
    return (failed.size() == 1 ? "1 result fails" : failed.size() + " results fail")
        + " the build:\n"
        + first
        + (more > 0 ? "\nand " + more + " more" : "");
  }
}
