package org.headhouse.linter.report.sheet;

import java.util.List;

/**
 * The content of the page for a line that does not work.
 *
 * @param link to the page of the site
 * @param tables one for each segment
 */
record FaultsSheet(PageFrame frame, String link, SheetHead head, List<FaultTable> tables) {
  FaultsSheet {
    tables = List.copyOf(tables);
  }

  static FaultsSheet of(SiteFacts facts, String name, SheetSettings settings) {
    return new FaultsSheet(
        PageFrame.ofSite(name, facts, settings.paper()),
        PageNames.link(PageNames.page(name)),
        SheetHead.of(facts, settings),
        FaultTable.of(facts, settings));
  }
}
