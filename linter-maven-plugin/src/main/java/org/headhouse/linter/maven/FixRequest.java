package org.headhouse.linter.maven;

import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.revision.EarlierFiles;
import org.headhouse.linter.revision.Revision;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/**
 * The sites are fixed.
 *
 * @param kind which fixes are tried
 * @param since the revision to compare with, or null for none
 * @param write whether the files are written; else only the differences are shown
 */
record FixRequest(SitesRequest sites, FixKind kind, @Nullable String since, boolean write)
    implements GoalRequest {

  @Override
  public void run(Console console) throws MojoFailureException, MojoExecutionException, UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    SiteLinter.Builder builder = run.builder().withoutBaseline();
    if (since == null) {
      fix(run, builder, console);
    } else {
      try (Revision revision = Revision.open(run.found().sites(), since, PluginParameters::name)) {
        EarlierFiles earlier = new EarlierFiles(revision, run.found(), run.base()::shown);
        fix(run, builder.before(earlier.state()), console);
      }
    }
  }

  private void fix(SiteRun run, SiteLinter.Builder builder, Console console)
      throws MojoFailureException, MojoExecutionException, UserError {
    SiteLinter linter = PluginLinterFactory.build(builder);
    ValidSettingsGuard.require(linter, console);
    FixLog log = new FixLog(kind);
    FixedFiles files = new FixedFiles(run);
    List<Notification> notifications =
        linter.fix(
            run.inputs(),
            kind,
            site -> {
              log.lines(site).forEach(line -> console.report(Level.NOTE, line));
              if (write && site.isChanged()) {
                files.write(site);
              }
            });
    new ConsoleReport(console, Level.NOTE).print(notifications);
    log.summary(write).forEach(line -> console.report(Level.NOTE, line));
    files.failOnErrors();
    BuildOutcome.of(notifications);
  }
}
