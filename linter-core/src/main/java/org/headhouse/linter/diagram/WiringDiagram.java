package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Site;

/**
 * The wiring diagram of a line: the trunk in the order of the chain, folded over rows, with
 * everything that is wired, and signs at the places that results are about.
 *
 * <p>Names of a site are shown as text, whatever is in them, and whole: their boxes grow.
 */
public final class WiringDiagram {
  private final Site site;
  private final ResultMarks marks;
  private final Measure measure;
  private final int stationAt;

  /**
   * @param results of this site; those that are accepted make no sign
   */
  public WiringDiagram(Site site, List<Result> results, Measure measure) {
    this.site = site;
    this.measure = measure;
    this.stationAt = ResultMarks.stationAt(site);
    this.marks = new ResultMarks(site, results, stationAt);
  }

  /**
   * Draws the line.
   *
   * @param detail how much of each item is drawn
   * @param prefix for the ids of the drawing, a letter and then letters, digits or hyphens
   * @return one SVG for each row, each complete in itself, to be shown one under the other without
   *     a gap; at least one
   */
  public List<String> svg(PageFormat format, Detail detail, String prefix) {
    List<Strip> strips = strips(format, detail);
    LineInWords words = new LineInWords(site, marks, measure, stationAt);
    List<String> drawings = new ArrayList<>();
    for (Strip strip : strips) {
      int number = drawings.size() + 1;
      String title =
          strips.size() == 1
              ? "Wiring diagram"
              : "Wiring diagram, part " + number + " of " + strips.size();
      drawings.add(
          Drawing.svg(strip, prefix + "-" + number, title, description(strip, words, number == 1)));
    }
    return List.copyOf(drawings);
  }

  /** The numbered signs of the drawing, in their order. */
  public List<Mark> signs() {
    return marks.all();
  }

  private String description(Strip strip, LineInWords words, boolean isFirst) {
    Heading heading = heading();
    String start =
        isFirst
            ? Lettering.isolated(heading.title())
                + ": "
                + Lettering.isolated(heading.facts())
                + ". "
            : "";
    return start + words.of(strip.stops());
  }

  List<Strip> strips(PageFormat format, Detail detail) {
    double width = Math.floor(format.width() / detail.scale());
    double cardWidth = CardWidth.of(site, marks, detail, width);
    Cards cards = new Cards(site, marks, stationAt, detail, cardWidth);
    List<Stop> stops = site.items().stream().map(item -> stop(item, cards, cardWidth)).toList();
    return DiagramLayout.of(heading(), stops, width);
  }

  private Stop stop(ChainItem item, Cards cards, double cardWidth) {
    Length stub = item.connection(Side.IN).stub().orNull();
    boolean last = item.index() == site.items().size() - 1;
    return new Stop(
        cards.of(item),
        stub == null ? null : measure.length(stub.metres()),
        last ? null : Hop.behind(item, measure, marks.ofCableBehind(item), cardWidth));
  }

  private Heading heading() {
    return new Heading(
        "Wiring diagram: " + Names.of(site), LineFacts.of(site, measure), marks.ofWholeLine());
  }
}
