package org.headhouse.linter.goal;

import java.util.stream.Stream;
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
public final class ValidSettingsGuard {
  private ValidSettingsGuard() {}

  /**
   * Reports what is wrong with policy and device types, as a check does.
   *
   * @return the outcome that the goal ends with, unless it is good
   */
  public static Outcome check(SiteLinter linter, Console console) {
    CheckReport settings = linter.check(Stream.empty());
    new ConsoleReport(console, Level.NOTE).printFound(settings);
    return Outcome.of(settings, Level.ERROR);
  }
}
