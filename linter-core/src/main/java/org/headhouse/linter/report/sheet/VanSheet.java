package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/**
 * The content of the sheet that hangs in the van: the wiring diagram, where each conductor is
 * landed, and the addresses.
 *
 * @param name of the page of the site, without its ending
 * @param facts the line in short
 * @param signs the number of the sign of the line as a whole; empty for none
 * @param open all that is wrong with the line as a whole
 * @param rows in the order of the chain
 */
record VanSheet(
    String name,
    PageFrame frame,
    String title,
    List<Fact> facts,
    Drawings drawings,
    String signs,
    List<OpenPoint> open,
    List<VanRow> rows) {
  private static final int WHOLE_LINE = -1;

  VanSheet {
    open = List.copyOf(open);
    facts = List.copyOf(facts);
    rows = List.copyOf(rows);
  }

  static VanSheet of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    Attention attention = new Attention(site, facts.results());
    List<LandingRow> landing =
        new LandingSchedule(site, facts.figures(), attention, settings.measure()).rows();
    List<VanRow> rows = new ArrayList<>();
    for (ChainItem item : site.items()) {
      rows.add(
          VanRow.of(
              item,
              signs(facts.drawings(), item.index()),
              landing.get(item.index()),
              attention.all(item)));
    }
    List<Fact> about = new ArrayList<>();
    about.add(new Fact("Stage", PlainText.word(site.stage())));
    about.add(new Fact("Made on", settings.date().toString()));
    about.add(facts.provenance().state());
    long accepted = facts.results().stream().filter(Result::suppressed).count();
    if (accepted > 0) {
      about.add(new Fact("Accepted faults", accepted + ", listed on the sheets for the site"));
    }
    return new VanSheet(
        name,
        PageFrame.ofSite(name, facts, settings.paper()),
        SheetHead.title(site),
        about,
        facts.drawings(),
        signs(facts.drawings(), WHOLE_LINE),
        attention.allOfWholeLine(),
        rows);
  }

  /** {@code 3, 4}: the numbers of the signs that are about an item. */
  private static String signs(Drawings drawings, int item) {
    return drawings.signs().stream()
        .filter(sign -> sign.item() == item)
        .map(sign -> String.valueOf(sign.number()))
        .collect(Collectors.joining(", "));
  }

  /** Whether the rows take two columns. */
  boolean isLong() {
    return !drawings.inWords().isEmpty();
  }

  /** The wiring diagram, one text a row of it. */
  List<String> diagram() {
    return isLong() ? drawings.inWords() : drawings.wiring();
  }

  /** The sheets of the site, beside this page. */
  String sheetsLink() {
    return PageNames.link(PageNames.page(name));
  }
}
