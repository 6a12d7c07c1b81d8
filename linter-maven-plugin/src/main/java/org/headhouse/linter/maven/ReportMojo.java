package org.headhouse.linter.maven;

import org.apache.maven.plugins.annotations.Mojo;
import org.apache.maven.plugins.annotations.Parameter;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.run.EnumParameter;
import org.headhouse.linter.run.SlackParameter;

/**
 * Writes the sheets that people take to each site, a page of HTML and a table of zones each, with a
 * certificate, a night card and a yearly sheet of one page each, a page with its materials and
 * labels, one for a line that does not work, and a list to fill in on a visit; a cover for each
 * customer with several sites; the page index.html over all sites; due.ics, the days on which lines
 * are due, where the policy sets how often; inventory.csv with every unit; materials.csv with the
 * materials of each site and of all; and figures.json: what is computed of each site's line, in
 * full precision. Sites need not be without results; what is missing in one leaves out the figures
 * that need it. Policy and device types have to be without an error.
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
   * The cable that is ordered beyond the measured lengths, in percent of them (the default is
   * common practice, no source).
   */
  @Parameter(property = "linter.slack", defaultValue = "10")
  private String slack = "10";

  /**
   * Whether the papers of each customer are put into one ZIP file as well, which can be sent: those
   * of a site without a customer have one of their own. Nothing of other customers is in it.
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
