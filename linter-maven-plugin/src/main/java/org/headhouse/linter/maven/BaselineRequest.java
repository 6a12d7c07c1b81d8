package org.headhouse.linter.maven;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.SitePaths;
import org.headhouse.linter.baseline.UnusableBaseline;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.GoalRequest;
import org.headhouse.linter.goal.ValidSettingsGuard;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.run.Console;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.LinterMaker;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.SiteRun;
import org.headhouse.linter.run.SitesRequest;
import org.jspecify.annotations.Nullable;

/**
 * The results that there are become the baseline.
 *
 * @param baseline the file to write, or null for the one that the policy names, else a usual one
 */
record BaselineRequest(SitesRequest sites, @Nullable Path baseline) implements GoalRequest {
  private static final String USUAL = "linter-baseline.jsonl";
  private static final int MOST_LEFT_OUT = 20;

  @Override
  public Outcome run(Console console, LinterMaker linters) throws UserError {
    SiteRun run = sites.find();
    run.reportSettings(console);
    SiteLinter linter = linters.make(builder(run));
    Outcome settings = ValidSettingsGuard.check(linter, console);
    if (!settings.isGood()) {
      return settings;
    }
    CheckReport report = run.check(linter, console);
    new ConsoleReport(console, Level.NOTE).print(report.notifications());
    Outcome outcome = Outcome.of(report.notifications());
    if (!outcome.isGood()) {
      return outcome;
    }
    Path file = linter.baselineFile().orElseGet(() -> run.found().home().resolve(USUAL));
    String shown = run.base().shown(file);
    Set<String> names = run.names();
    Baseline written =
        present(file, run.base(), console)
            .renewed(report.results(), names, Files.isDirectory(run.found().sites()));
    AtomicFile.write(file, written::write);
    console.report(Level.NOTE, counted(written.size()) + " in the baseline " + shown);
    if (linter.baselineFile().isEmpty()) {
      console.report(
          Level.NOTE,
          "A check uses it once the policy says \"baseline: " + file.getFileName() + "\"");
    }
    console.report(
        Level.NOTE, "For a single result, a suppression in the site's file is better: it says why");
    reportLeftOut(report.results(), names, console);
    return outcome;
  }

  /** Without the present baseline, so that all results are new and go into the next. */
  private SiteLinter.Builder builder(SiteRun run) {
    SiteLinter.Builder builder = run.builder();
    if (baseline != null) {
      builder.baseline(baseline);
    }
    return builder.withoutBaseline();
  }

  /** The baseline as it is: what it knows of sites that are not looked at now is kept. */
  private static Baseline present(Path file, BaseFolder base, Console console) throws UserError {
    SitePaths paths = SitePaths.of(file, base.path());
    try {
      return Baseline.read(file, base.shown(file), paths);
    } catch (UnusableBaseline unusable) {
      if (!unusable.isMissing()) {
        refuseToReplaceOther(file, base);
        console.report(Level.WARNING, unusable.getMessage() + ": it is written again");
      }
      return Baseline.empty(paths);
    } catch (IOException unreadable) {
      throw UserError.of("the baseline cannot be read", unreadable);
    }
  }

  private static void refuseToReplaceOther(Path file, BaseFolder base) throws UserError {
    boolean may;
    try {
      may = Baseline.mayReplace(file);
    } catch (IOException unreadable) {
      throw UserError.of("the baseline cannot be read", unreadable);
    }
    if (!may) {
      throw new UserError(
          base.shown(file)
              + " exists, but is not a baseline, and was not changed: name another file with"
              + " linter.baseline");
    }
  }

  /** Only results in sites: those of policy and device types were reported before. */
  private static void reportLeftOut(List<Result> results, Set<String> sites, Console console) {
    List<Result> leftOut =
        results.stream()
            .filter(result -> result.identities().isEmpty() && !result.suppressed())
            .filter(result -> sites.contains(result.location().file()))
            .toList();
    if (!leftOut.isEmpty()) {
      console.report(
          Level.WARNING,
          counted(leftOut.size()) + " not in it, because other rules depend on them. Fix these:");
      leftOut.stream()
          .limit(MOST_LEFT_OUT)
          .forEach(result -> console.report(Level.WARNING, "  " + TextReport.headline(result)));
      if (leftOut.size() > MOST_LEFT_OUT) {
        console.report(
            Level.WARNING,
            "  and " + (leftOut.size() - MOST_LEFT_OUT) + " more; the goal check lists them");
      }
    }
  }

  private static String counted(int number) {
    return number == 1 ? "1 result is" : number + " results are";
  }
}
