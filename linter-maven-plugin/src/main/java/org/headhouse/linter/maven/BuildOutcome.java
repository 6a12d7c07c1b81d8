package org.headhouse.linter.maven;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.Refusal;

/** Fails the build where a run failed. */
final class BuildOutcome {
  private static final int REPEATED = 5;

  private BuildOutcome() {}

  /**
   * A broken site fails the build; where the tool could not do its work, that is an error of it.
   */
  static void of(Outcome outcome) throws MojoFailureException, MojoExecutionException {
    int failed = outcome.failed().size();
    if (failed > 0) {
      throw new MojoFailureException(
          (failed == 1 ? "1 result fails" : failed + " results fail")
              + " the build:\n"
              + first(outcome.failed(), TextReport::headline));
    }
    Refusal refusal = outcome.refusal();
    if (refusal != null) {
      throw new MojoFailureException(
          refusal.what() + ":\n" + first(refusal.faults(), line -> line));
    }
    failOn(outcome.toolErrors());
  }

  private static void failOn(List<Notification> toolErrors) throws MojoExecutionException {
    if (!toolErrors.isEmpty()) {
      throw new MojoExecutionException(
          toolErrors.stream()
              .limit(REPEATED)
              .map(TextReport::headline)
              .collect(Collectors.joining("\n")));
    }
  }

  /** The first few of many, a line each, and how many more there are. */
  private static <T> String first(List<T> all, Function<T, String> line) {
    int more = all.size() - REPEATED;
    return all.stream().limit(REPEATED).map(line).collect(Collectors.joining("\n"))
        + (more > 0 ? "\nand " + more + " more" : "");
  }

  /** Why a goal could not do its work. Maven prints the message as it is. */
  static MojoExecutionException error(UserError error) {
    String message =
        String.valueOf(error.getMessage())
            .lines()
            .map(TextReport::printable)
            .collect(Collectors.joining("\n"));
    return new MojoExecutionException(message, error);
  }
}
