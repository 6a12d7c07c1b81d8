package org.headhouse.linter.maven;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.FiguresReport;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.SheetReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.ConsoleReport;

/**
 * Writes the sheets that people take to each site, a page of HTML and a table of zones each, the
 * page index.html over all sites, and figures.json: what is computed of each site's line, in full
 * precision. Sites need not be without results; what is missing in one leaves out the figures that
 * need it. Policy and device types have to be without an error.
 */
@Mojo(name = "report", requiresProject = false, threadSafe = true)
public final class ReportMojo extends SitesMojo {
  /** The units that lengths and temperatures are shown in: metric or us. */
  @Parameter(property = "linter.units", defaultValue = "metric")
  private String units = "metric";

  /** The paper that the sheets are printed on: A4 or Letter. */
  @Parameter(property = "linter.paper", defaultValue = "A4")
  private String paper = "A4";

  @Override
  void checkParameters() throws UserError {
    measure();
    paper();
  }

  private Measure measure() throws UserError {
    return EnumParameter.of("linter.units", units, Measure.values(), Measure::word);
  }

  private Paper paper() throws UserError {
    return EnumParameter.of("linter.paper", paper, Paper.values(), Paper::word);
  }

  @Override
  void run(SiteLinter linter, List<SiteInput> inputs)
      throws MojoExecutionException, MojoFailureException, UserError {
    ValidSettingsGuard.require(linter, console());
    Measure measure = measure();
    Paper size = paper();
    SheetFiles files = new SheetFiles(this::output);
    List<Notification> troubles = new ArrayList<>();
    Path figures = output("figures.json");
    AtomicFile.write(
        figures,
        out -> {
          try (FiguresReport json = new FiguresReport(out)) {
            SheetReport report =
                linter.sheets(
                    inputs.stream(),
                    measure,
                    size,
                    sheet -> {
                      json.add(sheet.figures());
                      files.add(sheet);
                    });
            files.add(report);
            troubles.addAll(report.notifications());
          }
        });
    files.failOnTrouble();
    console().tell(Level.NOTE, "Figures are in " + shown(figures));
    console().tell(Level.NOTE, "Sheets are in " + shown(output(SheetReport.PAGE)));
    new ConsoleReport(console(), Level.NOTE).print(troubles);
    BuildOutcome.ofTroubles(troubles);
  }
}
