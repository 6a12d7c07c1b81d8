package org.headhouse.linter.maven;

import java.util.List;
import java.util.Map;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.GoalRequest;
import org.headhouse.linter.goal.ValidSettingsGuard;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.DiagnosisOutput;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;

/**
 * The readings of the sites are diagnosed.
 *
 * @param output what is written, and from which readings
 */
record DiagnoseRequest(SitesRequest sites, DiagnosisOutput output) implements GoalRequest {

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    SiteLinter linter = linters.make(run.builder().withoutBaseline());
    Outcome settings = ValidSettingsGuard.check(linter, console);
    if (!settings.isGood()) {
      return settings;
    }
    List<Notification> notifications = output.write(Map.of(run, linter), run.base(), console);
    new ConsoleReport(console, Level.NOTE).print(notifications);
    return Outcome.of(notifications);
  }
}
