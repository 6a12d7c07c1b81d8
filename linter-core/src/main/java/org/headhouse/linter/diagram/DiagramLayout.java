package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.diagram.Part.TextPart;

/**
 * Lays a line out on pages.
 *
 * <p>Every row is read from left to right, and the cable turns back between two rows. So "in" is
 * always left and "out" always right, as at the terminals, and addresses rise from left to right.
 * If the cable ran to and fro, every other row would be reversed.
 */
final class DiagramLayout {
  private static final double LEGEND_GAP = 10;

  private final Heading heading;
  private final List<ChainRow> rows;
  private final List<Legend.Entry> legend;
  private final double width;
  private final double mostHeight;
  private final double headingHeight;
  private final double footHeight;
  private final List<Draft> drafts = new ArrayList<>();
  private double lastTop;

  private DiagramLayout(Heading heading, List<Stop> stops, List<Mark> marks, PageFormat format) {
    this.heading = heading;
    this.width = format.width();
    this.mostHeight = format.height();
    this.headingHeight = heading.height(width);
    this.footHeight = Heading.footHeight(width);
    this.rows = ChainRow.of(stops, width);
    this.legend = Legend.of(marks, width);
  }

  /** The pages of a line; at least one. */
  static List<Page> of(Heading heading, List<Stop> stops, List<Mark> marks, PageFormat format) {
    return new DiagramLayout(heading, stops, marks, format).pages();
  }

  /** A page that is being filled. */
  private static final class Draft {
    private final List<Part> parts = new ArrayList<>();
    private final List<Stop> stops = new ArrayList<>();
    private double bottom;

    private Draft(double bottom) {
      this.bottom = bottom;
    }
  }

  private List<Page> pages() {
    newPage();
    for (int i = 0; i < rows.size(); i++) {
      place(i);
    }
    placeLegend();
    List<Page> pages = new ArrayList<>();
    for (Draft draft : drafts) {
      heading.place(pages.size() + 1, drafts.size(), width, draft.parts);
      Heading.placeFoot(draft.bottom, width, draft.parts);
      double height = Math.ceil(draft.bottom + footHeight);
      pages.add(new Page(width, height, draft.parts, draft.stops));
    }
    return pages;
  }

  private Draft newPage() {
    Draft draft = new Draft(headingHeight);
    drafts.add(draft);
    return draft;
  }

  private Draft page() {
    return drafts.get(drafts.size() - 1);
  }

  private boolean fits(double height) {
    return page().bottom + height + footHeight <= mostHeight;
  }

  /** Places a row with the channel above it, and leaves room for the one below. */
  private void place(int index) {
    ChainRow row = rows.get(index);
    double behind = index < rows.size() - 1 ? Trunk.CHANNEL : 0;
    Draft before = page();
    boolean turns = !before.stops.isEmpty() && !fits(Trunk.CHANNEL + row.height() + behind);
    Draft page = turns ? newPage() : before;
    double channelTop = page.bottom;
    double top = index == 0 ? channelTop : channelTop + Trunk.CHANNEL;
    if (index > 0) {
      ChainRow previous = rows.get(index - 1);
      if (turns) {
        before.bottom += Trunk.CHANNEL;
        turnPage(previous, row, before, page, top);
      } else {
        Trunk.back(
            hop(previous), previous.out(lastTop), row.in(top), channelTop, width, page.parts);
      }
    }
    row.place(top, page.parts);
    page.stops.addAll(row.stops());
    page.bottom = top + row.height();
    lastTop = top;
  }

  private void turnPage(ChainRow previous, ChainRow row, Draft before, Draft page, double top) {
    int number = drafts.size();
    Trunk.away(
        hop(previous),
        "to page " + number + ": " + row.first().name(),
        previous.out(lastTop),
        before.bottom - Trunk.CHANNEL,
        width,
        before.parts);
    Trunk.here(
        hop(previous),
        "from page " + (number - 1) + ": " + previous.last().name(),
        row.in(top),
        top - Trunk.CHANNEL,
        width,
        page.parts);
  }

  private static Hop hop(ChainRow previous) {
    Hop hop = previous.last().toNext();
    if (hop == null) {
      throw new IllegalStateException("the line ends within its rows");
    }
    return hop;
  }

  private void placeLegend() {
    if (legend.isEmpty()) {
      return;
    }
    double title = LEGEND_GAP + TextStyle.TITLE.line();
    if (!fits(title + legend.get(0).height())) {
      newPage();
    }
    placeLegendTitle("What the numbered signs mean");
    for (Legend.Entry entry : legend) {
      if (!fits(entry.height())) {
        newPage();
        placeLegendTitle("What the numbered signs mean, continued");
      }
      entry.place(page().bottom, width, page().parts);
      page().bottom += entry.height();
    }
  }

  private void placeLegendTitle(String title) {
    Draft page = page();
    page.bottom += LEGEND_GAP;
    page.parts.add(TextPart.fitted(title, 0, page.bottom, width, TextStyle.TITLE, Align.START));
    page.bottom += TextStyle.TITLE.line();
  }
}
