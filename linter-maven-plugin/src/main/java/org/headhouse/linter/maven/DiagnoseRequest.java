package org.headhouse.linter.maven;

import java.util.List;
import java.util.Map;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.DiagnosisOutput;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;

/**
 * The readings of the sites are diagnosed.
 *
 * @param output what is written, and from which readings
 */
record DiagnoseRequest(SitesRequest sites, DiagnosisOutput output) implements GoalRequest {

  @Override
  public void run(Console console) throws MojoFailureException, MojoExecutionException, UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    SiteLinter linter = PluginLinterFactory.build(run.builder().withoutBaseline());
    ValidSettingsGuard.require(linter, console);
    List<Notification> notifications = output.write(Map.of(run, linter), console);
    new ConsoleReport(console, Level.NOTE).print(notifications);
    BuildOutcome.of(notifications);
  }
}
