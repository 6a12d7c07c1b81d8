package org.headhouse.linter.maven;

import java.util.List;
import java.util.stream.Collectors;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.Outcome;

/** Ends the build where it must. */
final class BuildOutcome {
  private static final int REPEATED = 5;

  private BuildOutcome() {}

  /** A broken site fails the build; a trouble of the tool itself is an error of the build. */
  static void of(Outcome outcome) throws MojoFailureException, MojoExecutionException {
    if (!outcome.failed().isEmpty()) {
      throw new MojoFailureException(repeated(outcome.failed()));
    }
    failOn(outcome.troubles());
  }

  /** A trouble of the tool itself is an error of the build. */
  static void ofTroubles(List<Notification> notifications) throws MojoExecutionException {
    failOn(Outcome.of(notifications).troubles());
  }

  private static void failOn(List<Notification> troubles) throws MojoExecutionException {
    if (!troubles.isEmpty()) {
      throw new MojoExecutionException(
          troubles.stream()
              .limit(REPEATED)
              .map(ConsoleReport::text)
              .collect(Collectors.joining("\n")));
    }
  }

  /** What was in the way of the goal, as an error of the build. */
  static MojoExecutionException error(UserError trouble) {
    return new MojoExecutionException(printable(trouble), trouble);
  }

  /** Maven prints it as it is; several troubles have a line each. */
  private static String printable(UserError trouble) {
    return String.valueOf(trouble.getMessage())
        .lines()
        .map(TextReport::printable)
        .collect(Collectors.joining("\n"));
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
