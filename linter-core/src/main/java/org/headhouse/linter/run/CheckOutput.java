package org.headhouse.linter.run;

import java.nio.file.Path;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of the report of a check.
 *
 * @param failing the mildest level that fails the run
 * @param printed the mildest level that is printed
 * @param folder where the files for other programs are written, or null where they are not
 */
public record CheckOutput(Level failing, Level printed, @Nullable Path folder) {

  /**
   * Prints a report, writes it for other programs, and judges it.
   *
   * @param base what the folder is shown from
   * @throws UserError where a file cannot be written
   */
  public Outcome write(CheckReport report, Console console, BaseFolder base) throws UserError {
    ConsoleReport lines = new ConsoleReport(console, printed);
    lines.print(report);
    lines.printAbsent(report.absent());
    if (folder != null) {
      ResultFiles.write(folder, report, failing);
      console.report(Level.NOTE, "Results are in " + base.shown(folder));
    }
    return Outcome.of(report, failing);
  }
}
