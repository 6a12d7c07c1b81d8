package org.headhouse.linter.goal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.DiagnosisOutput;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SiteRun;

/**
 * The readings of the sites are diagnosed.
 *
 * @param sites that are asked for
 * @param base what paths are shown from
 * @param output what is written, and from which readings
 */
public record DiagnoseRequest(Search sites, BaseFolder base, DiagnosisOutput output)
    implements GoalRequest {

  /** Finds sites, put together by what holds for them; reports what it leaves out. */
  @FunctionalInterface
  public interface Search {
    List<SiteRun> find(Console console) throws UserError;
  }

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    Map<SiteRun, SiteLinter> runs = new LinkedHashMap<>();
    for (SiteRun run : sites.find(console)) {
      run.reportSettings(console);
      SiteLinter linter = linters.make(run.builder().withoutBaseline());
      Outcome settings = ValidSettingsGuard.check(linter, console);
      if (!settings.isGood()) {
        return settings;
      }
      runs.put(run, linter);
    }
    List<Notification> notifications = output.write(runs, base, console);
    new ConsoleReport(console, Level.NOTE).print(notifications);
    return Outcome.of(notifications);
  }
}
