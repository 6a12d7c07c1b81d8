package org.headhouse.linter.run;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.check.ReadingsText;
import org.headhouse.linter.diagnosis.SiteDiagnosis;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.StaleParts;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.DiagnosisReport;
import org.headhouse.linter.report.DiagnosisText;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.jspecify.annotations.Nullable;

/**
 * Prints the diagnoses of sites with readings, and writes {@code diagnosis.json}.
 *
 * @param readings that count in place of those of the one site; null for those of the files
 * @param folder that the file is written into; null to write none
 */
public record DiagnosisOutput(@Nullable String readings, @Nullable Path folder) {

  /**
   * Diagnoses the sites of some runs.
   *
   * @param runs each with its linter, in order
   * @return what kept files from being diagnosed
   * @throws UserError where the readings are not understood, or are given for several sites
   */
  public List<Notification> write(Map<SiteRun, SiteLinter> runs, Console console) throws UserError {
    if (readings != null) {
      requireReadings(readings);
      if (runs.keySet().stream().mapToInt(run -> run.found().files().size()).sum() > 1) {
        throw new UserError("the readings belong to one line: name the one file of that line");
      }
    }
    Printed printed = new Printed(console);
    if (folder == null) {
      return diagnose(runs, printed);
    }
    List<Notification> notifications = new ArrayList<>();
    Path file = folder.resolve("diagnosis.json");
    StaleParts.sweep(folder);
    AtomicFile.write(
        file,
        out -> {
          try (DiagnosisReport report = new DiagnosisReport(out)) {
            printed.report = report;
            notifications.addAll(diagnose(runs, printed));
          }
        });
    BaseFolder base = runs.keySet().iterator().next().base();
    console.report(Level.NOTE, "The diagnosis is in " + base.shown(file));
    return notifications;
  }

  private static void requireReadings(String text) throws UserError {
    try {
      ReadingsText.readings(text);
    } catch (IllegalArgumentException notUnderstood) {
      throw new UserError(String.valueOf(notUnderstood.getMessage()), notUnderstood);
    }
  }

  private List<Notification> diagnose(Map<SiteRun, SiteLinter> runs, Printed printed) {
    List<Notification> notifications = new ArrayList<>();
    runs.forEach(
        (run, linter) ->
            notifications.addAll(
                readings == null
                    ? linter.diagnose(run.inputs(), printed::take)
                    : linter.diagnose(run.inputs(), readings, printed::take)));
    printed.end();
    return notifications;
  }

  private static final class Printed {
    private final Console console;
    private @Nullable DiagnosisReport report;
    private boolean any;

    Printed(Console console) {
      this.console = console;
    }

    void end() {
      if (!any) {
        console.found(
            Level.NOTE,
            "No site has readings: enter them under as-found, or give them with "
                + console.called().typed("asFound", "<readings>"));
      }
    }

    void take(SiteDiagnosis site) {
      if (!site.hasReadings()) {
        return;
      }
      if (!any) {
        DiagnosisText.cautions().forEach(line -> console.found(Level.NOTE, line));
      }
      any = true;
      DiagnosisText.of(site).forEach(line -> console.found(Level.NOTE, line));
      if (report != null) {
        report.add(site);
      }
    }
  }
}
