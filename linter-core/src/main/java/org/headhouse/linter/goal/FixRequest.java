package org.headhouse.linter.goal;

import java.util.List;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
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
public record FixRequest(SitesRequest sites, FixKind kind, @Nullable String since, boolean write)
    implements GoalRequest {
  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    SiteLinter.Builder builder = run.builder().withoutBaseline();
    // Whoever edits a line that works may have written that it is planned: the commit knows better.
    try (ComparedState compared =
        ComparedState.of(run, since, sites.settings().called(), console)) {
      SiteState earlier = compared.state();
      return fix(run, linters.make(earlier == null ? builder : builder.before(earlier)), console);
    }
  }

  private Outcome fix(SiteRun run, SiteLinter linter, Console console) throws UserError {
    Outcome settings = ValidSettingsGuard.check(linter, console);
    if (!settings.isGood()) {
      return settings;
    }
    FixLog log = new FixLog(kind, sites.settings().called());
    FixedFiles files = new FixedFiles(run);
    List<Notification> notifications =
        linter.fix(
            run.inputs(),
            kind,
            site -> {
              log.lines(site).forEach(line -> console.found(Level.NOTE, line));
              if (write && site.isChanged()) {
                files.write(site);
              }
            });
    new ConsoleReport(console, Level.NOTE).print(notifications);
    log.summary(write).forEach(line -> console.found(Level.NOTE, line));
    files.failOnErrors();
    return Outcome.of(notifications);
  }
}
