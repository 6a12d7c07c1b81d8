package org.headhouse.linter.run;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.StaleParts;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.RepositoryPaths;
import org.headhouse.linter.report.RunDetails;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.result.Level;

/** Writes the files that other programs read results from. */
public final class ResultFiles {
  private static final String SARIF = "results.sarif";

  private ResultFiles() {}

  /** Whether a folder has results that were written since some time. */
  public static boolean areWrittenSince(Instant time, Path folder) {
    try {
      FileTime written = Files.getLastModifiedTime(folder.resolve(SARIF));
      return !written.toInstant().isBefore(time);
    } catch (IOException none) {
      return false;
    }
  }

  /**
   * Writes results.sarif and results-junit.xml into a folder, which is made where there is none.
   *
   * @param failing the mildest level that fails a test case
   * @throws UserError where one cannot be written
   */
  static void write(Path folder, CheckReport report, Level failing, RunDetails run)
      throws UserError {
    StaleParts.sweep(folder);
    AtomicFile.write(
        folder.resolve(SARIF),
        out ->
            new SarifReport(report.rules(), run)
                .write(report.results(), report.absent(), report.notifications(), out));
    AtomicFile.write(
        folder.resolve("results-junit.xml"),
        out ->
            new JUnitReport(failing, run.paths())
                .write(report.results(), report.notifications(), out));
  }

  /** Writes the results that are open as another form. */
  static void write(Path folder, CheckReport report, OutputForm form, RepositoryPaths paths)
      throws UserError {
    AtomicFile.write(
        folder.resolve(form.file()),
        out -> form.write(report.at(Level.NOTE), report.notifications(), paths, out));
  }

  /** Writes results-open.sarif: without what is accepted, known or absent. */
  static void writeOpen(Path folder, CheckReport report, RunDetails run) throws UserError {
    AtomicFile.write(
        folder.resolve("results-open.sarif"),
        out ->
            new SarifReport(report.rules(), run)
                .write(report.at(Level.NOTE), report.notifications(), out));
  }
}
