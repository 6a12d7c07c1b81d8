package org.headhouse.linter.maven;

import java.io.File;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.SitePaths;
import org.headhouse.linter.baseline.UnusableBaseline;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.ProgressLines;
import org.jspecify.annotations.Nullable;

/**
 * Writes the results that there are into a baseline, so that only new ones fail a check. A
 * suppression in the site's file is better for a single result, since it tells the reason. Nothing
 * is written while the policy or the device types have an error, or a file cannot be read.
 */
@Mojo(name = "baseline", requiresProject = false, threadSafe = true)
public final class BaselineMojo extends SitesMojo {
  private static final String USUAL = "linter-baseline.jsonl";

  /**
   * The file to write; by default the one that the policy names, else linter-baseline.jsonl beside
   * the policy or the folder of sites.
   */
  @Parameter(property = "linter.baseline")
  private @Nullable File baseline;

  @Override
  void checkParameters() {
    // Whatever is named can be written, or the attempt tells why not.
  }

  @Override
  void useEarlierResults(SiteLinter.Builder builder) {
    if (baseline != null) {
      builder.baseline(baseline.toPath());
    }
    builder.withoutBaseline();
  }

  @Override
  void run(SiteLinter linter, List<SiteInput> inputs)
      throws MojoExecutionException, MojoFailureException, UserError {
    ValidSettingsGuard.require(linter, console());
    CheckReport report = linter.check(inputs.stream(), new ProgressLines(console(), inputs.size()));
    new ConsoleReport(console(), Level.NOTE).print(report.notifications());
    BuildOutcome.ofTroubles(report.notifications());
    Path file = linter.baselineFile().orElseGet(() -> besideSites(USUAL));
    Set<String> sites = inputs.stream().map(SiteInput::path).collect(Collectors.toSet());
    Baseline written = present(file).renewed(report.results(), sites, isWholeFolder());
    AtomicFile.write(file, written::write);
    console().tell(Level.NOTE, counted(written.size()) + " in the baseline " + shown(file));
    if (linter.baselineFile().isEmpty()) {
      console()
          .tell(
              Level.NOTE,
              "A check uses it once the policy says \"baseline: " + file.getFileName() + "\"");
    }
    getLog().info("For a single result, a suppression in the site's file is better: it says why");
    tellLeftOut(report.results(), sites);
  }

  /** What it knows of sites that are not looked at this time stays. */
  private Baseline present(Path file) throws UserError {
    SitePaths paths = pathsFrom(file);
    try {
      return Baseline.read(file, shown(file), paths);
    } catch (UnusableBaseline unusable) {
      if (!unusable.isMissing()) {
        refuseToReplaceOther(file);
        console().tell(Level.WARNING, unusable.getMessage() + ": written anew");
      }
      return Baseline.empty(paths);
    } catch (IOException unreadable) {
      throw UserError.of("the baseline cannot be read", unreadable);
    }
  }

  private void refuseToReplaceOther(Path file) throws UserError {
    boolean may;
    try {
      may = Baseline.mayReplace(file);
    } catch (IOException unreadable) {
      throw UserError.of("the baseline cannot be read", unreadable);
    }
    if (!may) {
      throw new UserError(
          shown(file)
              + " is there and is no baseline, and is left as it is: name another file with"
              + " linter.baseline");
    }
  }

  /** What is milder than an error in policy and device types was told before. */
  private void tellLeftOut(List<Result> results, Set<String> sites) {
    List<Result> leftOut =
        results.stream()
            .filter(result -> result.identity() == null && !result.suppressed())
            .filter(result -> sites.contains(result.location().file()))
            .toList();
    if (!leftOut.isEmpty()) {
      getLog()
          .warn(
              counted(leftOut.size())
                  + " not in it, since other rules count on what they tell. Mend these:");
      leftOut.forEach(result -> getLog().warn("  " + TextReport.headline(result)));
    }
  }

  private static String counted(int number) {
    return number == 1 ? "1 result is" : number + " results are";
  }
}
