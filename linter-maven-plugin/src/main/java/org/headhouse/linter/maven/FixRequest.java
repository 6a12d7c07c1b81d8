package org.headhouse.linter.maven;

import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.repository.SiteState;
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
 * @param since the revision to compare with, or null for the last one, where there is one
 * @param write whether the files are written; else only the differences are shown
 */
record FixRequest(SitesRequest sites, FixKind kind, @Nullable String since, boolean write)
    implements GoalRequest {
  private static final String LAST = "HEAD";

  @Override
  public void run(Console console) throws MojoFailureException, MojoExecutionException, UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    SiteLinter.Builder builder = run.builder().withoutBaseline();
    try (Revision revision = revision(run)) {
      SiteState earlier = revision == null ? null : state(revision, run);
      fix(run, earlier == null ? builder : builder.before(earlier), console);
    }
  }

  /**
   * Whoever edits a line that works may have written that it is planned: the last revision knows
   * better. Where there is none, or it cannot be read, nobody asked for it.
   */
  private @Nullable Revision revision(SiteRun run) throws UserError {
    Path sites = run.found().sites();
    if (since != null) {
      return Revision.open(sites, since, PluginParameters::name);
    }
    try {
      return Revision.open(sites, LAST, PluginParameters::name);
    } catch (UserError none) {
      return null;
    }
  }

  private @Nullable SiteState state(Revision revision, SiteRun run) throws UserError {
    try {
      return new EarlierFiles(revision, run.found(), run.base()::shown).state();
    } catch (UserError unreadable) {
      if (since != null) {
        throw unreadable;
      }
      return null;
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
