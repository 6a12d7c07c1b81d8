package org.headhouse.linter.sheets;

import java.util.List;
import org.headhouse.linter.diagram.Detail;
import org.headhouse.linter.diagram.Mark;
import org.headhouse.linter.diagram.PageFormat;
import org.headhouse.linter.diagram.Plots;
import org.headhouse.linter.diagram.WiringDiagram;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.sheet.Drawings;
import org.headhouse.linter.report.sheet.SignMeaning;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Site;

/**
 * Makes the drawings for the sheets of a site.
 *
 * @param policy with the margins that the plots show beside the voltages
 */
record SiteDrawings(Measure measure, Paper paper, SitePolicy policy) {

  /** The line of so many items has room in full size on one page beside its table. */
  private static final int MOST_IN_FULL_SIZE = 10;

  Drawings of(Site site, LineFigures figures, List<Result> results) {
    PageFormat format = paper == Paper.A4 ? PageFormat.A4 : PageFormat.LETTER;
    Traffic traffic = figures.traffic();
    WiringDiagram wiring = new WiringDiagram(site, results, measure);
    return new Drawings(
        wiring.svg(format, Detail.DRAWN, "wiring"),
        site.items().size() > MOST_IN_FULL_SIZE
            ? wiring.svg(format, Detail.IN_WORDS, "van")
            : List.of(),
        wiring.signs().stream().map(SiteDrawings::meaning).toList(),
        Plots.alongTheLine(figures, policy, measure, format, "voltages").orElse(""),
        traffic == null ? "" : Plots.useOfTime(traffic, format, "time"));
  }

  private static SignMeaning meaning(Mark mark) {
    return new SignMeaning(
        mark.number(),
        mark.item(),
        mark.level().word(),
        mark.place(),
        mark.results().stream().map(result -> result.message().fact()).toList());
  }
}
