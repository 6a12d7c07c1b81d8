package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * One line of a bundle on its first page; small, as one is kept for every site.
 *
 * @param pages its pages and lists, each with its link
 */
public record StartRow(String title, List<Fact> pages) {
  public StartRow {
    pages = List.copyOf(pages);
  }

  /** That of a site whose page has a name. */
  public static StartRow of(SiteFacts facts, String name) {
    return new StartRow(
        SheetHead.title(facts.site()),
        List.of(
            link("certificate", PageNames.certificate(name)),
            link("night card", PageNames.nightCard(name)),
            link("sheets for the site", PageNames.page(name)),
            link("yearly sheet", PageNames.yearly(name)),
            link("van sheet", PageNames.van(name)),
            link("materials and labels", PageNames.materials(name)),
            link("when it does not work", PageNames.faults(name)),
            link("list of what has to be proved", PageNames.visit(name)),
            link("list of zones", PageNames.zones(name))));
  }

  private static Fact link(String words, String file) {
    return new Fact(words, PageNames.link(file));
  }
}
