package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * The content of the page over all sites.
 *
 * @param date the day on which it is made
 * @param settings what is wrong in the files that hold for all sites
 */
record SheetIndex(
    PageFrame frame, String date, int ruleSet, List<IndexRow> rows, List<String> settings) {

  SheetIndex {
    rows = List.copyOf(rows);
    settings = List.copyOf(settings);
  }

  /** The number of sites, and of those with errors. */
  String summary() {
    long broken = rows.stream().filter(row -> row.errors() > 0 || row.link().isEmpty()).count();
    return rows.size()
        + (rows.size() == 1 ? " site, " : " sites, ")
        + (broken == 0 ? "none" : broken)
        + " with errors or not readable";
  }
}
