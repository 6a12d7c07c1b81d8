package org.headhouse.linter.maven;

import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.Outcome;

/**
 * Keeps a goal from using a policy or device types with an error: what was not understood there
 * would be missing from what the goal makes, and nobody would see it.
 */
final class ValidSettingsGuard {
  private ValidSettingsGuard() {}

  /**
   * Reports what is wrong with policy and device types, as a check does.
   *
   * @throws MojoFailureException where there is an error, whatever level fails a check
   */
  static void require(SiteLinter linter, Console console)
      throws MojoFailureException, MojoExecutionException {
    CheckReport settings = linter.check(Stream.empty());
    new ConsoleReport(console, Level.NOTE).printFound(settings);
    BuildOutcome.of(Outcome.of(settings, Level.ERROR));
  }
}
