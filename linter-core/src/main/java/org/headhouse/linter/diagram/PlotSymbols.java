package org.headhouse.linter.diagram;

import static org.headhouse.linter.diagram.SvgDocument.number;

import org.headhouse.linter.diagram.Part.Bar;
import org.headhouse.linter.diagram.Part.Dot;
import org.headhouse.linter.markup.XmlWriter;

/** The values of a plot. */
final class PlotSymbols {
  private static final double DOT = 2.5;
  private static final double RING = 6;
  private static final double BETWEEN_LINES = 5;

  private PlotSymbols() {}

  static void write(Dot dot, XmlWriter xml) {
    xml.start("g").element("title", dot.told());
    circle(dot.at(), DOT, "solid", xml);
    if (dot.ringed()) {
      circle(dot.at(), RING, "lead", xml);
    }
    xml.end();
  }

  private static void circle(Point at, double radius, String kind, XmlWriter xml) {
    xml.empty(
        "circle", "class", kind, "cx", number(at.x()), "cy", number(at.y()), "r", number(radius));
  }

  static void write(Bar bar, XmlWriter xml) {
    Area area = bar.area();
    xml.empty(
        "rect",
        "class",
        bar.fill() == Bar.Fill.SOLID ? "solid" : "frame",
        "x",
        number(area.x()),
        "y",
        number(area.y()),
        "width",
        number(area.width()),
        "height",
        number(area.height()));
    if (bar.fill() == Bar.Fill.LINED) {
      StringBuilder lines = new StringBuilder();
      for (double x = area.x() + BETWEEN_LINES; x < area.right(); x += BETWEEN_LINES) {
        lines.append('M').append(number(x)).append(' ').append(number(area.y()));
        lines.append('v').append(number(area.height()));
      }
      xml.empty("path", "class", "lead", "d", lines.toString());
    }
  }
}
