package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * The wiring diagram of a line: the trunk in the order of the chain, folded over rows and pages,
 * with everything that is wired, and signs at the places that results are about.
 *
 * <p>Names of a site are shown as text, whatever is in them; those that do not fit are cut, and are
 * given in full in a {@code title}.
 */
public final class WiringDiagram {
  private WiringDiagram() {}

  /**
   * Draws a line.
   *
   * @param results of this site; those that are accepted make no sign
   * @param prefix for the ids of the drawing, a letter and then letters, digits or hyphens
   * @return one SVG for each page of paper, each complete in itself; at least one
   */
  public static List<String> svg(
      Site site, List<Result> results, Measure measure, PageFormat format, String prefix) {
    int stationAt = ResultMarks.stationAt(site);
    ResultMarks marks = new ResultMarks(site, results, stationAt);
    List<Page> pages = pages(site, marks, measure, format);
    LineInWords words = new LineInWords(site, marks, measure, stationAt);
    List<String> drawings = new ArrayList<>();
    for (Page page : pages) {
      int number = drawings.size() + 1;
      String title = "Wiring diagram, page " + number + " of " + pages.size();
      String description =
          description(page, words, number == 1 ? heading(site, marks, measure) : null);
      drawings.add(Drawing.svg(page, prefix + "-" + number, title, description));
    }
    return List.copyOf(drawings);
  }

  private static String description(Page page, LineInWords words, @Nullable Heading heading) {
    String start =
        heading == null
            ? ""
            : Lettering.isolated(heading.title())
                + ": "
                + Lettering.isolated(heading.facts())
                + ". ";
    String rest =
        page.stops().isEmpty() && heading == null
            ? "The list of what the numbered signs mean."
            : words.of(page.stops());
    return start + rest;
  }

  static List<Page> pages(Site site, ResultMarks marks, Measure measure, PageFormat format) {
    int stationAt = ResultMarks.stationAt(site);
    Cards cards = new Cards(site, marks, stationAt);
    List<Stop> stops =
        site.items().stream().map(item -> stop(item, site, cards, marks, measure)).toList();
    return DiagramLayout.of(heading(site, marks, measure), stops, marks.all(), format);
  }

  private static Stop stop(
      ChainItem item, Site site, Cards cards, ResultMarks marks, Measure measure) {
    Length stub = item.connection(Side.IN).stub().orNull();
    boolean last = item.index() == site.items().size() - 1;
    return new Stop(
        cards.of(item),
        Names.plain(item),
        stub == null ? null : measure.length(stub.metres()),
        last ? null : Hop.behind(item, measure, marks.ofCableBehind(item)));
  }

  private static Heading heading(Site site, ResultMarks marks, Measure measure) {
    return new Heading(
        "Wiring diagram: " + Names.of(site), LineFacts.of(site, measure), marks.ofWholeLine());
  }
}
