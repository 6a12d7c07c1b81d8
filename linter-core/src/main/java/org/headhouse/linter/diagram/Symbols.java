package org.headhouse.linter.diagram;

import static org.headhouse.linter.diagram.SvgDocument.line;
import static org.headhouse.linter.diagram.SvgDocument.move;
import static org.headhouse.linter.diagram.SvgDocument.number;

import org.headhouse.linter.diagram.Part.Bar;
import org.headhouse.linter.diagram.Part.Dot;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.Symbol;
import org.headhouse.linter.markup.XmlWriter;
import org.headhouse.linter.result.Level;

/**
 * The symbols of the trade as IEC 60617 has them (from memory), the signs of faulty places (a
 * filled triangle for an error, an open one for a warning, a circle for a note), and the values of
 * a plot.
 */
final class Symbols {
  private static final double DOT = 2.5;
  private static final double RING = 6;
  private static final double BETWEEN_LINES = 5;
  private static final double SIZE_OF_NUMBER = 9;

  private final SvgDocument svg;

  Symbols(SvgDocument svg) {
    this.svg = svg;
  }

  void write(Symbol symbol) {
    Area area = symbol.area();
    switch (symbol.kind()) {
      case RESISTOR -> svg.rectangle("frame", area);
      case CAPACITOR -> capacitor(area);
      case EARTH -> earth(area);
      case ARRESTER -> arrester(area);
      case REPEATER -> repeater(area);
      case TERMINAL -> circle("frame", area);
      case JUNCTION -> circle("solid", area);
    }
  }

  private void circle(String kind, Area area) {
    svg.circle(kind, area.centreX(), area.centreY(), area.width() / 2);
  }

  /** Two plates; the lead between them is covered. */
  private void capacitor(Area area) {
    svg.xml()
        .empty(
            "rect",
            "x",
            number(area.x()),
            "y",
            number(area.centreY() - 2),
            "width",
            number(area.width()),
            "height",
            "4",
            "style",
            "fill:var(--paper)");
    svg.path(
        "wire",
        move(area.x(), area.y())
            + line(area.x(), area.bottom())
            + move(area.right(), area.y())
            + line(area.right(), area.bottom()));
  }

  /** Three strokes, each shorter than the one above. */
  private void earth(Area area) {
    double first = area.y() + 4;
    StringBuilder d = new StringBuilder(move(area.centreX(), area.y()));
    d.append(line(area.centreX(), first));
    for (int stroke = 0; stroke < 3; stroke++) {
      double half = area.width() / 2 * (1 - stroke / 3.0);
      double y = first + 4 * stroke;
      d.append(move(area.centreX() - half, y)).append(line(area.centreX() + half, y));
    }
    svg.path("lead", d.toString());
  }

  /** A box with an arrow towards its base. */
  private void arrester(Area area) {
    svg.rectangle("frame", area);
    double x = area.centreX();
    double y = area.centreY();
    svg.path("lead", move(x, area.y()) + line(x, y));
    svg.path("solid", move(x - 3, y - 1) + line(x + 3, y - 1) + line(x, area.bottom() - 2) + "Z");
  }

  /** A box with a triangle that points away from the head unit. */
  private void repeater(Area area) {
    svg.rectangle("frame", area);
    svg.path(
        "solid",
        move(area.x() + 6, area.y() + 2.5)
            + line(area.right() - 5, area.centreY())
            + line(area.x() + 6, area.bottom() - 2.5)
            + "Z");
  }

  void write(Sign sign) {
    Area area = sign.area();
    Level level = sign.mark().level();
    String number = String.valueOf(sign.mark().number());
    XmlWriter xml = svg.xml().start("g");
    xml.element("title", level.word() + ", sign " + number);
    boolean triangle = level != Level.NOTE;
    if (triangle) {
      svg.path(
          level == Level.ERROR ? "solid" : "frame",
          move(area.centreX(), area.y() + 1)
              + line(area.right() - 1, area.bottom() - 1)
              + line(area.x() + 1, area.bottom() - 1)
              + "Z");
    } else {
      svg.circle("frame", area.centreX(), area.centreY(), 10);
    }
    xml.element(
        "text",
        number,
        "class",
        level == Level.ERROR ? "reversed" : "",
        "x",
        number(area.centreX()),
        "y",
        number(triangle ? area.bottom() - 4 : area.centreY() + SIZE_OF_NUMBER * 0.36),
        "font-size",
        number(SIZE_OF_NUMBER),
        "font-weight",
        "bold",
        "text-anchor",
        "middle");
    xml.end();
  }

  void write(Dot dot) {
    Point at = dot.at();
    svg.xml().start("g").element("title", dot.title());
    svg.circle("solid", at.x(), at.y(), DOT);
    if (dot.ringed()) {
      svg.circle("lead", at.x(), at.y(), RING);
    }
    svg.xml().end();
  }

  void write(Bar bar) {
    Area area = bar.area();
    svg.rectangle(bar.fill() == Bar.Fill.SOLID ? "solid" : "frame", area);
    if (bar.fill() == Bar.Fill.LINED) {
      StringBuilder lines = new StringBuilder();
      for (double x = area.x() + BETWEEN_LINES; x < area.right(); x += BETWEEN_LINES) {
        lines.append(move(x, area.y())).append('v').append(number(area.height()));
      }
      svg.path("lead", lines.toString());
    }
  }
}
