package org.headhouse.linter.run;

import java.nio.file.Path;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.StaleParts;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.result.Level;

/** Writes the files that other programs read results from. */
public final class ResultFiles {
  private ResultFiles() {}

  /**
   * Writes results.sarif and results-junit.xml into a folder, which is made where there is none.
   *
   * @param failing the mildest level that fails a test case
   * @throws UserError where one cannot be written
   */
  public static void write(Path folder, CheckReport report, Level failing) throws UserError {
    StaleParts.sweep(folder);
    AtomicFile.write(
        folder.resolve("results.sarif"),
        out ->
            new SarifReport(report.rules())
                .write(report.results(), report.absent(), report.notifications(), out));
    AtomicFile.write(
        folder.resolve("results-junit.xml"),
        out -> new JUnitReport(failing).write(report.results(), report.notifications(), out));
  }
}
