package org.headhouse.linter.diagram;

import static org.headhouse.linter.diagram.SvgDocument.number;

import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.Symbol;
import org.headhouse.linter.markup.XmlWriter;
import org.headhouse.linter.result.Level;

/**
 * The symbols of the trade as IEC 60617 has them (from memory), and the signs of faulty places: a
 * filled triangle for an error, an open one for a warning, a circle for a note.
 */
final class Symbols {
  private Symbols() {}

  static void write(Symbol symbol, XmlWriter xml) {
    Area area = symbol.area();
    switch (symbol.kind()) {
      case RESISTOR -> box(area, xml);
      case CAPACITOR -> capacitor(area, xml);
      case EARTH -> earth(area, xml);
      case ARRESTER -> arrester(area, xml);
      case AMPLIFIERS -> amplifiers(area, xml);
      case TERMINAL -> circle(area, "frame", xml);
      case JUNCTION -> circle(area, "solid", xml);
    }
  }

  private static void box(Area area, XmlWriter xml) {
    xml.empty(
        "rect",
        "class",
        "frame",
        "x",
        number(area.x()),
        "y",
        number(area.y()),
        "width",
        number(area.width()),
        "height",
        number(area.height()));
  }

  private static void circle(Area area, String kind, XmlWriter xml) {
    xml.empty(
        "circle",
        "class",
        kind,
        "cx",
        number(area.centreX()),
        "cy",
        number(area.centreY()),
        "r",
        number(area.width() / 2));
  }

  private static void path(String kind, String d, XmlWriter xml) {
    xml.empty("path", "class", kind, "d", d);
  }

  private static String move(double x, double y) {
    return "M" + number(x) + " " + number(y);
  }

  private static String line(double x, double y) {
    return "L" + number(x) + " " + number(y);
  }

  /** Two plates, and nothing of the lead between them. */
  private static void capacitor(Area area, XmlWriter xml) {
    xml.empty(
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
    path(
        "wire",
        move(area.x(), area.y())
            + line(area.x(), area.bottom())
            + move(area.right(), area.y())
            + line(area.right(), area.bottom()),
        xml);
  }

  /** Three strokes, each shorter than the one above. */
  private static void earth(Area area, XmlWriter xml) {
    double first = area.y() + 4;
    StringBuilder d = new StringBuilder(move(area.centreX(), area.y()));
    d.append(line(area.centreX(), first));
    for (int stroke = 0; stroke < 3; stroke++) {
      double half = area.width() / 2 * (1 - stroke / 3.0);
      double y = first + 4 * stroke;
      d.append(move(area.centreX() - half, y)).append(line(area.centreX() + half, y));
    }
    path("lead", d.toString(), xml);
  }

  /** A box with an arrow towards its base. */
  private static void arrester(Area area, XmlWriter xml) {
    box(area, xml);
    double x = area.centreX();
    double y = area.centreY();
    path("lead", move(x, area.y()) + line(x, y), xml);
    path("solid", move(x - 3, y - 1) + line(x + 3, y - 1) + line(x, area.bottom() - 2) + "Z", xml);
  }

  /** A triangle points the way that the signal goes. */
  private static void amplifiers(Area area, XmlWriter xml) {
    double half = area.width() / 2 - 1;
    path(
        "frame",
        move(area.x(), area.y())
            + line(area.x() + half, area.centreY())
            + line(area.x(), area.bottom())
            + "Z"
            + move(area.right(), area.y())
            + line(area.right() - half, area.centreY())
            + line(area.right(), area.bottom())
            + "Z",
        xml);
  }

  static void write(Sign sign, XmlWriter xml) {
    Area area = sign.area();
    Level level = sign.mark().level();
    xml.start("g");
    xml.element("title", level.word() + ", sign " + sign.mark().number());
    boolean triangle = level != Level.NOTE;
    if (triangle) {
      String d =
          move(area.centreX(), area.y() + 1)
              + line(area.right() - 1, area.bottom() - 1)
              + line(area.x() + 1, area.bottom() - 1)
              + "Z";
      path(level == Level.ERROR ? "solid" : "frame", d, xml);
    } else {
      circle(Area.around(area.centreX(), area.centreY(), 20, 20), "frame", xml);
    }
    double size = 9;
    xml.element(
        "text",
        String.valueOf(sign.mark().number()),
        "class",
        level == Level.ERROR ? "reversed" : "",
        "x",
        number(area.centreX()),
        "y",
        number(triangle ? area.bottom() - 4 : area.centreY() + size * 0.36),
        "font-size",
        number(size),
        "font-weight",
        "bold",
        "text-anchor",
        "middle");
    xml.end();
  }
}
