package org.headhouse.linter.goal;

import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.revision.EarlierFiles;
import org.headhouse.linter.revision.Revision;
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
  private static final String LAST = "HEAD";

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    SiteLinter.Builder builder = run.builder().withoutBaseline();
    try (Revision revision = revision(run)) {
      SiteState earlier = revision == null ? null : state(revision, run);
      return fix(run, linters.make(earlier == null ? builder : builder.before(earlier)), console);
    }
  }

  /**
   * Whoever edits a line that works may have written that it is planned: the last revision knows
   * better. Where there is none, or it cannot be read, nobody asked for it.
   */
  private @Nullable Revision revision(SiteRun run) throws UserError {
    Path place = run.found().sites();
    ParameterNames called = sites.settings().called();
    if (since != null) {
      return Revision.open(place, since, called);
    }
    try {
      return Revision.open(place, LAST, called);
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
