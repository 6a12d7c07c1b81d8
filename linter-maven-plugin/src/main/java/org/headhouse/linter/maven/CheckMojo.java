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
import org.headhouse.linter.report.JUnitReport;
import org.headhouse.linter.report.SarifReport;
import org.headhouse.linter.result.Level;
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
   * Whether to tell only of sites that differ from linter.since; of all where device types or
   * policy differ.
   */
  @Parameter(property = "linter.changedOnly", defaultValue = "false")
  private boolean changedOnly;

  private @Nullable Revision revision;
  private @Nullable Set<String> changed;

  @Override
  void useBaseline(SiteLinter.Builder builder) {
    if (baseline != null) {
      builder.baseline(baseline.toPath());
    }
  }

  @Override
  void checkParameters() throws MojoExecutionException {
    failing();
    printed();
    if (changedOnly && since == null) {
      throw new MojoExecutionException(
          "linter.changedOnly needs linter.since: write for example -Dlinter.since=origin/main");
    }
  }

  @Override
  void compare(SiteLinter.Builder builder, FoundSites found) throws MojoExecutionException {
    if (since != null) {
      revision = Revision.open(found.sites(), since);
      EarlierFiles earlier = new EarlierFiles(revision, found, this::shown);
      builder.before(earlier.state());
      if (changedOnly) {
        changed = earlier.changed();
      }
    }
  }

  @Override
  void close() {
    if (revision != null) {
      revision.close();
    }
  }

  private Level failing() throws MojoExecutionException {
    return Levels.of("linter.failLevel", failLevel);
  }

  private Level printed() throws MojoExecutionException {
    return Levels.of("linter.printLevel", printLevel);
  }

  @Override
  void run(SiteLinter linter, List<SiteInput> inputs)
      throws MojoExecutionException, MojoFailureException {
    CheckReport report =
        only(linter.check(inputs.stream(), new ProgressLog(getLog(), inputs.size())));
    ConsoleReport console = new ConsoleReport(getLog(), printed());
    console.print(report);
    console.printAbsent(report.absent());
    write(report);
    console.failOn(report, failing());
  }

  /** What is told where only changes are asked for. */
  private CheckReport only(CheckReport report) {
    if (changed == null) {
      return report;
    }
    getLog()
        .info(
            "Only what differs from "
                + since
                + " is told: "
                + changed.size()
                + " of "
                + report.files()
                + " files.");
    return report.only(changed);
  }

  private void write(CheckReport report) throws MojoExecutionException {
    Level failing = failing();
    AtomicFile.write(
        output("results.sarif"),
        out ->
            new SarifReport(report.rules())
                .write(report.results(), report.absent(), report.notifications(), out));
    AtomicFile.write(
        output("results-junit.xml"),
        out -> new JUnitReport(failing).write(report.results(), report.notifications(), out));
    getLog().info("Results are in " + shown(output("")));
  }
}
