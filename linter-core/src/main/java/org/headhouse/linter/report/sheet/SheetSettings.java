package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.Map;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.site.ExcludedAddresses;

/**
 * What holds for the sheets of all sites.
 *
 * @param date the day on which they are made
 * @param ruleSet the number of the rule set that the sites were checked with
 * @param requirements what each rule asks for, in a sentence, by its id
 * @param tolerance how far a measured value may lie outside the computed range, as a share
 * @param busiest the share of the time that the line may be in use
 * @param keptFree the addresses that no unit is to have
 */
public record SheetSettings(
    Measure measure,
    Paper paper,
    LocalDate date,
    int ruleSet,
    Map<String, String> requirements,
    double tolerance,
    double busiest,
    ExcludedAddresses keptFree) {

  public SheetSettings {
    requirements = Map.copyOf(requirements);
  }
}
