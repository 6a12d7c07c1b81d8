package org.headhouse.linter.run;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.nio.file.Path;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.AnnotationReport;
import org.headhouse.linter.report.RunDetails;
import org.headhouse.linter.result.Level;
import org.jspecify.annotations.Nullable;

/**
 * What becomes of the report of a check.
 *
 * @param failing the mildest level that fails the run
 * @param printed the mildest level that is printed
 * @param folder where the files for other programs are written, or null where they are not
 * @param form what is printed, or written where it is for programs
 * @param run what is said of the run
 */
public record CheckOutput(
    Level failing, Level printed, @Nullable Path folder, OutputForm form, RunDetails run) {

  /** Text, and files of a run of which nothing is known. */
  public CheckOutput(Level failing, Level printed, @Nullable Path folder) {
    this(failing, printed, folder, OutputForm.text(), RunDetails.unknown());
  }

  /** The same into another folder. */
  public CheckOutput into(Path other) {
    return new CheckOutput(failing, printed, other, form, run);
  }

  /**
   * Prints a report, writes it for other programs, and judges it.
   *
   * @param base what the folder is shown from
   * @throws UserError where a file cannot be written
   */
  public Outcome write(CheckReport report, Console console, BaseFolder base) throws UserError {
    ConsoleReport lines = new ConsoleReport(console, printed);
    if (form.isPrintedAlone()) {
      ByteArrayOutputStream printedForm = new ByteArrayOutputStream();
      form.write(report.at(printed), report.notifications(), run.paths(), printedForm);
      printedForm.toString(UTF_8).lines().forEach(console::plain);
      lines.print(report.notifications());
    } else {
      lines.print(report);
      lines.printAbsent(report.absent());
    }
    if (form.format() == OutputFormat.GITHUB) {
      new AnnotationReport(run.paths())
          .lines(report.at(printed), report.notifications())
          .forEach(console::plain);
    }
    if (folder != null) {
      ResultFiles.write(folder, report, failing, run);
      if (form.onlyOpen()) {
        ResultFiles.writeOpen(folder, report, run);
      }
      if (form.isWritten()) {
        ResultFiles.write(folder, report, form, run.paths());
      }
      console.report(Level.NOTE, "Results are in " + base.shown(folder));
    }
    return Outcome.of(report, failing);
  }
}
