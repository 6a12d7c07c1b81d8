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
 * Keeps a goal from building upon a policy or device types that are broken: what was not understood
 * there would be missing from what it makes, and nothing in that would tell so.
 */
final class ValidSettingsGuard {
  private ValidSettingsGuard() {}

  /**
   * Tells what is wrong with policy and device types, as a check does.
   *
   * @throws MojoFailureException where some of it is an error, whatever level fails a check
   */
  static void require(SiteLinter linter, Console console)
      throws MojoFailureException, MojoExecutionException {
    CheckReport settings = linter.check(Stream.empty());
    new ConsoleReport(console, Level.NOTE).printFound(settings);
    BuildOutcome.of(Outcome.of(settings, Level.ERROR));
  }
}
