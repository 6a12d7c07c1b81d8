package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.time.Period;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.materials.Slack;
import org.headhouse.linter.report.Paper;

/**
 * Settings for the sheets of all sites.
 *
 * @param date the day on which they are made
 * @param ruleSet the number of the rule set that the sites were checked with
 * @param requirements the requirement of each rule, by its id
 * @param notJudged the requirements of the rules that the policy does not apply in full: those on
 *     records that are off, and errors that it counts as less
 * @param policy the policy for every site: the sheets show the limits that rules check
 * @param proofEvery how often a line is proved again; zero where the policy does not say
 * @param slack the cable that is ordered beyond the measured lengths
 */
public record SheetSettings(
    Measure measure,
    Paper paper,
    LocalDate date,
    int ruleSet,
    Map<String, String> requirements,
    List<String> notJudged,
    SitePolicy policy,
    Period proofEvery,
    Slack slack) {

  public SheetSettings {
    notJudged = List.copyOf(notJudged);
    requirements = Map.copyOf(requirements);
  }
}
