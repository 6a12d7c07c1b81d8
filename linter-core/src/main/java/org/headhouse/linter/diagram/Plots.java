package org.headhouse.linter.diagram;

import java.util.Optional;
import org.headhouse.linter.figures.LineFigures;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.Traffic;

/** Plots of a line's figures as SVG, each complete in itself. */
public final class Plots {
  private Plots() {}

  /**
   * The idle and the received voltage at each item over the distance from the start of the line.
   * The received voltage is that from the weakest sender of the same segment.
   *
   * @param prefix for the ids of the drawing, a letter and then letters, digits or hyphens
   * @return empty where nothing can be computed
   */
  public static Optional<String> alongTheLine(
      LineFigures figures, SitePolicy policy, Measure measure, PageFormat format, String prefix) {
    LinePlot plot = new LinePlot(LineProfile.of(figures), policy, measure, format.width());
    return plot.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Drawing.svg(plot.page(), prefix, "Voltages along the line", plot.description()));
  }

  /**
   * How the time of a line is spent, as a bar.
   *
   * @param prefix for the ids of the drawing, a letter and then letters, digits or hyphens
   */
  public static String useOfTime(Traffic traffic, PageFormat format, String prefix) {
    TimeBar bar = new TimeBar(traffic);
    return Drawing.svg(
        bar.page(format.width()), prefix, "How the line's time is spent", bar.description());
  }
}
