package org.headhouse.linter.report.sheet;

import java.time.Period;
import java.util.List;
import org.headhouse.linter.figures.Shown;

/**
 * The content of the page over all sites.
 *
 * @param date the day on which it is made
 * @param settings what is wrong in the files that hold for all sites
 * @param groups the sites of each customer, worst first
 * @param hasPeriod whether the policy says how often a line is proved again
 * @param due the sites that are due, and those of which that is not known
 * @param planned the materials of all planned lines
 * @param slack the share of cable that is added
 */
record SheetIndex(
    PageFrame frame,
    String date,
    int ruleSet,
    List<IndexGroup> groups,
    List<String> settings,
    boolean hasPeriod,
    List<DueProof> due,
    List<FirmwareCounts.Row> firmware,
    List<MaterialRow> planned,
    String slack) {

  SheetIndex {
    groups = List.copyOf(groups);
    settings = List.copyOf(settings);
  }

  static SheetIndex of(IndexFacts facts, List<String> settingsResults, SheetSettings settings) {
    Period every = settings.proofEvery();
    return new SheetIndex(
        PageFrame.ofIndex(settings.paper()),
        settings.date().toString(),
        settings.ruleSet(),
        IndexGroup.of(facts.rows(), settings.date()),
        settingsResults,
        !every.isZero(),
        DueProof.of(facts.rows(), settings.date(), every),
        facts.firmware().rows(),
        facts.planned().totals().stream().map(MaterialRow::of).toList(),
        Shown.tolerance(settings.slack().share()));
  }

  /** The number of sites, and of those with errors. */
  String summary() {
    List<IndexRow> rows = groups.stream().flatMap(group -> group.rows().stream()).toList();
    long broken = rows.stream().filter(row -> row.errors() > 0 || row.link().isEmpty()).count();
    return rows.size()
        + (rows.size() == 1 ? " site, " : " sites, ")
        + (broken == 0 ? "none" : broken)
        + " with errors or unreadable";
  }
}
