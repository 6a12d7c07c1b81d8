package org.headhouse.linter.maven;

import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.goal.ReportRequest;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.SlackParameter;

/**
 * Writes the sheets that people take to each site: an HTML page and a table of zones; a
 * certificate, a night card and a yearly sheet of one page each; a page with materials and labels,
 * one for a line that does not work, and a list to fill in on a visit. Also writes a cover for each
 * customer with several sites; index.html, which lists all sites; due.ics, the days on which lines
 * are due, if the policy sets how often; inventory.csv with every unit; materials.csv with the
 * materials of each site and of all; and figures.json, the computed figures of each line in full
 * precision. Sites may have results; figures that need what a site lacks are left out. Policy and
 * device types must have no error.
 */
@Mojo(name = "report", requiresProject = false, threadSafe = true)
public final class ReportMojo extends SitesMojo {
  /** The units that lengths and temperatures are shown in: metric or us. */
  @Parameter(property = "linter.units", defaultValue = "metric")
  private String units = "metric";

  /** The paper that the sheets are printed on: A4 or Letter. */
  @Parameter(property = "linter.paper", defaultValue = "A4")
  private String paper = "A4";

  /**
   * The extra cable to order, in percent of the measured lengths (the default is common practice,
   * no source).
   */
  @Parameter(property = "linter.slack", defaultValue = SlackParameter.USUAL)
  private String slack = SlackParameter.USUAL;

  /**
   * Whether to put the papers of each customer into a ZIP file too, which can be sent to that
   * customer. It has nothing of other customers. A site without a customer gets its own ZIP file.
   */
  @Parameter(property = "linter.bundle", defaultValue = "false")
  private boolean bundle;

  @Override
  ReportRequest request() throws UserError {
    return new ReportRequest(
        sitesRequest(),
        output(),
        EnumParameter.of("linter.units", units, Measure.values(), Measure::word),
        EnumParameter.of("linter.paper", paper, Paper.values(), Paper::word),
        SlackParameter.of("linter.slack", slack),
        bundle);
  }
}
