package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/**
 * The content of the sheet that hangs in the van: the wiring diagram, where each conductor is
 * landed, and the addresses.
 *
 * @param name of the page of the site, without its ending
 * @param facts the line in short
 * @param rows in the order of the chain
 */
record VanSheet(
    String name,
    PageFrame frame,
    String title,
    List<Fact> facts,
    Drawings drawings,
    List<VanRow> rows) {
  /** So many items have one page, with a diagram that is drawn smaller. */
  private static final int MOST_ON_ONE_PAGE = 21;

  private static final int MOST_IN_FULL_SIZE = 10;

  VanSheet {
    facts = List.copyOf(facts);
    rows = List.copyOf(rows);
  }

  static VanSheet of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    List<LandingRow> landing =
        new LandingSchedule(site, facts.figures(), new Attention(List.of()), settings.measure())
            .rows();
    List<VanRow> rows = new ArrayList<>();
    for (ChainItem item : site.items()) {
      rows.add(VanRow.of(item, landing.get(item.index())));
    }
    List<Fact> about = new ArrayList<>();
    about.add(new Fact("Stage", PlainText.word(site.stage())));
    about.add(new Fact("Made on", settings.date().toString()));
    about.add(facts.provenance().state());
    return new VanSheet(
        name,
        PageFrame.ofSite(name, facts, settings.paper()),
        SheetHead.title(site),
        about,
        facts.drawings(),
        rows);
  }

  /** Whether the rows take two columns. */
  boolean isLong() {
    return rows.size() > MOST_IN_FULL_SIZE;
  }

  /** The class of CSS with the size of the diagram on paper. */
  String scale() {
    return !isLong() ? "" : rows.size() > MOST_ON_ONE_PAGE ? "smallest" : "smaller";
  }

  /** The sheets of the site, beside this page. */
  String sheetsLink() {
    return PageNames.link(PageNames.page(name));
  }
}
