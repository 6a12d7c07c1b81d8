package org.headhouse.linter.maven;

import java.io.File;
import java.util.List;
import java.util.Set;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.LifecyclePhase;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.CleanSitesFile;
import org.headhouse.linter.run.ConsoleReport;
import org.headhouse.linter.run.Levels;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.ProgressLines;
import org.headhouse.linter.run.ResultFiles;
import org.jspecify.annotations.Nullable;

/**
 * Checks the sites of a repository, and fails the build where a rule is broken. Writes
 * results.sarif and results-junit.xml.
 */
@Mojo(
    name = "check",
    defaultPhase = LifecyclePhase.VALIDATE,
    requiresProject = false,
    threadSafe = true)
public final class CheckMojo extends SitesMojo {
  /** The mildest level that fails the build: error, warning, note or none. */
  @Parameter(property = "linter.failLevel", defaultValue = "error")
  private String failLevel = "error";

  /** The mildest level that is printed: error, warning, note or none. */
  @Parameter(property = "linter.printLevel", defaultValue = "note")
  private String printLevel = "note";

  /**
   * The file with results that were there before, which fail nothing; by default the one that the
   * policy names, if it names one. The goal baseline writes it.
   */
  @Parameter(property = "linter.baseline")
  private @Nullable File baseline;

  /** A revision of the git repository with which rules on changes compare. */
  @Parameter(property = "linter.since")
  private @Nullable String since;

  /**
   * Whether to tell only of sites that differ from linter.since; of all where device types, policy
   * or baseline differ.
   */
  @Parameter(property = "linter.changedOnly", defaultValue = "false")
  private boolean changedOnly;

  /** Whether to check also the sites that a run of this user, on this day, found clean. */
  @Parameter(property = "linter.recheck", defaultValue = "false")
  private boolean recheck;

  private @Nullable CleanSitesFile clean;
  private @Nullable Revision revision;
  private @Nullable EarlierFiles earlier;

  @Override
  void useEarlierResults(SiteLinter.Builder builder) {
    if (baseline != null) {
      builder.baseline(baseline.toPath());
    }
    clean = recheck || since != null ? null : CleanSitesFile.in(output(""));
    if (clean != null) {
      builder.cleanFiles(clean::open);
    }
  }

  @Override
  void checkParameters() throws MojoExecutionException, UserError {
    failing();
    printed();
    if (changedOnly && since == null) {
      throw new MojoExecutionException(
          "linter.changedOnly needs linter.since: write for example -Dlinter.since=origin/main");
    }
  }

  @Override
  void compare(SiteLinter.Builder builder, FoundSites found)
      throws MojoExecutionException, UserError {
    if (since != null) {
      revision = Revision.open(found.sites(), since);
      earlier = new EarlierFiles(revision, found, this::shown);
      builder.before(earlier.state());
    }
  }

  @Override
  void close() {
    if (revision != null) {
      revision.close();
    }
  }

  private Level failing() throws UserError {
    return Levels.of("linter.failLevel", failLevel);
  }

  private Level printed() throws UserError {
    return Levels.of("linter.printLevel", printLevel);
  }

  @Override
  void run(SiteLinter linter, List<SiteInput> inputs)
      throws MojoExecutionException, MojoFailureException, UserError {
    CheckReport whole = linter.check(inputs.stream(), new ProgressLines(console(), inputs.size()));
    CheckReport report =
        changedOnly && earlier != null
            ? only(whole, earlier.changed(linter.baselineFile()), inputs)
            : whole;
    ConsoleReport console = new ConsoleReport(console(), printed());
    console.print(report);
    console.printAbsent(report.absent());
    ResultFiles.write(output(""), report, failing());
    if (clean != null) {
      clean.save();
    }
    console().tell(Level.NOTE, "Results are in " + shown(output("")));
    BuildOutcome.of(Outcome.of(report, failing()));
  }

  /** What is told where only changes are asked for. */
  private CheckReport only(CheckReport report, Set<String> changed, List<SiteInput> inputs) {
    long sites = inputs.stream().map(SiteInput::path).filter(changed::contains).count();
    getLog()
        .info(
            "Only what differs from "
                + since
                + " is told: "
                + sites
                + " of "
                + report.files()
                + " files.");
    return report.only(changed);
  }
}
