package org.headhouse.linter.sheets;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.diagram.PageFormat;
import org.headhouse.linter.diagram.Plots;
import org.headhouse.linter.diagram.WiringDiagram;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.report.Paper;
import org.headhouse.linter.report.sheet.Drawings;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Site;

/**
 * Makes the drawings for the sheets of a site.
 *
 * @param policy with the margins that the plots show beside the voltages
 */
record SiteDrawings(Measure measure, Paper paper, SitePolicy policy) {

  Drawings of(Site site, LineFigures figures, List<Result> results) {
    PageFormat format = paper == Paper.A4 ? PageFormat.A4 : PageFormat.LETTER;
    List<String> plots = new ArrayList<>();
    Plots.alongTheLine(figures, policy, measure, format, "voltages").ifPresent(plots::add);
    Traffic traffic = figures.traffic();
    if (traffic != null) {
      plots.add(Plots.useOfTime(traffic, format, "time"));
    }
    return new Drawings(WiringDiagram.svg(site, results, measure, format, "wiring"), plots);
  }
}
