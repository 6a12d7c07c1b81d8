package org.headhouse.linter.maven;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugins.annotations.Mojo;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.FiguresReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;

/**
 * Writes figures.json: what is computed of each site's line, in full precision. Sites need not be
 * without results; what is missing in one leaves out the figures that need it.
 */
@Mojo(name = "report", requiresProject = false, threadSafe = true)
public final class ReportMojo extends SitesMojo {

  @Override
  void checkParameters() {
    // There are none besides those that all goals over sites have.
  }

  @Override
  void run(SiteLinter linter, List<SiteInput> inputs) throws MojoExecutionException {
    Path file = output("figures.json");
    List<Notification> troubles = new ArrayList<>();
    AtomicFile.write(
        file,
        out -> {
          try (FiguresReport report = new FiguresReport(out)) {
            troubles.addAll(linter.figures(inputs.stream(), report::add));
          }
        });
    getLog().info("Figures are in " + shown(file));
    new ConsoleReport(getLog(), Level.NOTE).print(troubles);
    ConsoleReport.failOnTroubles(troubles);
  }
}
