package org.headhouse.linter.maven;

import java.nio.file.Path;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.GoalRequest;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.revision.EarlierFiles;
import org.headhouse.linter.revision.Revision;
import org.headhouse.linter.run.CheckOutput;
import org.headhouse.linter.run.CleanSitesFile;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/**
 * The sites are checked.
 *
 * @param baseline or null for the one that the policy names
 * @param since the revision to compare with, or null for none
 * @param changedOnly whether only sites that differ from that revision are reported
 * @param recheck whether sites that were clean are checked again
 * @param execution which one of the build this is
 */
record CheckRequest(
    SitesRequest sites,
    CheckOutput output,
    @Nullable Path baseline,
    @Nullable String since,
    boolean changedOnly,
    boolean recheck,
    OwnExecution execution)
    implements GoalRequest {

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    CheckOutput results = execution.of(output, run.base(), console);
    SiteLinter.Builder builder = run.builder();
    if (baseline != null) {
      builder.baseline(baseline);
    }
    return since == null
        ? all(results, run, builder, console, linters)
        : since(since, results, run, builder, console, linters);
  }

  private Outcome all(
      CheckOutput results,
      SiteRun run,
      SiteLinter.Builder builder,
      Console console,
      LinterMaker linters)
      throws UserError {
    CleanSitesFile clean =
        recheck || results.folder() == null ? null : CleanSitesFile.in(results.folder());
    if (clean != null) {
      builder.cleanFiles(clean::open);
    }
    CheckReport report = run.check(linters.make(builder), console);
    Outcome outcome = results.write(report, console, run.base());
    if (clean != null) {
      clean.save();
    }
    return outcome;
  }

  private Outcome since(
      String name,
      CheckOutput results,
      SiteRun run,
      SiteLinter.Builder builder,
      Console console,
      LinterMaker linters)
      throws UserError {
    try (Revision revision = Revision.open(run.found().sites(), name, sites.settings().called())) {
      EarlierFiles earlier = new EarlierFiles(revision, run.found(), run.base()::shown);
      SiteLinter linter = linters.make(builder.beforeAll(earlier.state()));
      CheckReport report = run.check(linter, console);
      if (changedOnly) {
        EarlierFiles.Changes changes = earlier.changes(linter.baselineFile());
        reportChoice(name, report, changes, run, console);
        report = report.only(changes.files());
      }
      return results.write(report, console, run.base());
    }
  }

  private static void reportChoice(
      String name, CheckReport report, EarlierFiles.Changes changes, SiteRun run, Console console) {
    if (changes.forAll() != null) {
      console.report(
          Level.NOTE,
          changes.forAll()
              + " applies to all sites and differs from "
              + name
              + ", so all of them are reported.");
      return;
    }
    long sites = run.names().stream().filter(changes.files()::contains).count();
    console.report(
        Level.NOTE,
        "Only sites that differ from "
            + name
            + " are reported: "
            + sites
            + " of "
            + report.files()
            + " files.");
  }
}
