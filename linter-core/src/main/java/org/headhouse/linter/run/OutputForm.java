package org.headhouse.linter.run;

import java.io.OutputStream;
import java.util.List;
import org.headhouse.linter.report.CodeQualityReport;
import org.headhouse.linter.report.JsonLinesReport;
import org.headhouse.linter.report.RepositoryPaths;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;

/**
 * The form of results that a user asks for.
 *
 * @param format which one
 * @param onlyOpen whether results-open.sarif is written too, without what is accepted, known or
 *     absent
 * @param intoFile whether a form for programs becomes a file of its own; else it is printed, and
 *     nothing with it
 */
public record OutputForm(OutputFormat format, boolean onlyOpen, boolean intoFile) {

  /** Lines for people. */
  public static OutputForm text() {
    return new OutputForm(OutputFormat.TEXT, false, false);
  }

  private boolean isForPrograms() {
    return format == OutputFormat.GITLAB || format == OutputFormat.JSON;
  }

  boolean isPrintedAlone() {
    return isForPrograms() && !intoFile;
  }

  boolean isWritten() {
    return isForPrograms() && intoFile;
  }

  /** The name of the file that it becomes. */
  String file() {
    return format == OutputFormat.GITLAB ? "results-gitlab.json" : "results.jsonl";
  }

  void write(
      List<Result> results,
      List<Notification> notifications,
      RepositoryPaths paths,
      OutputStream out) {
    if (format == OutputFormat.GITLAB) {
      new CodeQualityReport(paths).write(results, notifications, out);
    } else {
      new JsonLinesReport(paths).write(results, notifications, out);
    }
  }
}
