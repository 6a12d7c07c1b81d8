package org.headhouse.linter.maven;

import java.io.File;
import java.util.List;
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
    CheckReport report = linter.check(inputs.stream(), new ProgressLog(getLog(), inputs.size()));
    ConsoleReport console = new ConsoleReport(getLog(), printed());
    console.print(report);
    console.printAbsent(report.absent());
    write(report);
    console.failOn(report, failing());
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
