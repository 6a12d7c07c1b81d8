package org.headhouse.linter.diagram;

import static org.headhouse.linter.diagram.SvgDocument.number;

import java.util.List;
import org.headhouse.linter.diagram.Part.Bar;
import org.headhouse.linter.diagram.Part.Dot;
import org.headhouse.linter.diagram.Part.Frame;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.Symbol;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.diagram.Part.Wire;
import org.headhouse.linter.markup.XmlWriter;

/** Writes the parts of a layout as SVG, where they stand. */
final class Drawing {
  private final XmlWriter xml;

  private Drawing(XmlWriter xml) {
    this.xml = xml;
  }

  /**
   * The text of a drawing.
   *
   * @param prefix of its ids
   * @param told what is to be seen, in words
   */
  static String svg(Page page, String prefix, String title, String told) {
    XmlWriter xml = SvgDocument.start(page.width(), page.height(), prefix, title, told);
    new Drawing(xml).add(page.parts());
    return SvgDocument.end(xml);
  }

  /** Lines first, then what stands on them. */
  private void add(List<Part> parts) {
    parts.stream().filter(Wire.class::isInstance).forEach(this::wireFirst);
    parts.stream().filter(Frame.class::isInstance).forEach(this::add);
    parts.stream().filter(Drawing::isInsideOfFrame).forEach(this::add);
    parts.stream()
        .filter(part -> !(part instanceof Wire) && !(part instanceof Frame))
        .forEach(this::add);
  }

  private static boolean isInsideOfFrame(Part part) {
    return part instanceof Wire wire && !isCable(wire);
  }

  private static boolean isCable(Wire wire) {
    return wire.kind() == Wire.Kind.CABLE || wire.kind() == Wire.Kind.OUTDOOR_CABLE;
  }

  private void wireFirst(Part part) {
    if (!isInsideOfFrame(part)) {
      add(part);
    }
  }

  private void add(Part part) {
    if (part instanceof TextPart text) {
      text(text);
    } else if (part instanceof Frame frame) {
      frame(frame);
    } else if (part instanceof Wire wire) {
      wire(wire);
    } else if (part instanceof Symbol symbol) {
      Symbols.write(symbol, xml);
    } else if (part instanceof Sign sign) {
      Symbols.write(sign, xml);
    } else if (part instanceof Dot dot) {
      PlotSymbols.write(dot, xml);
    } else if (part instanceof Bar bar) {
      PlotSymbols.write(bar, xml);
    }
    xml.newLine();
  }

  /** Text whose size only the font knows is kept in its area by a view of its own. */
  private void text(TextPart text) {
    Area area = text.area();
    TextStyle style = text.style();
    boolean clipped = Lettering.isUncertain(text.shown());
    double left = 0;
    double top = 0;
    if (clipped) {
      left = area.x();
      top = area.y();
      xml.start(
          "svg",
          "x",
          number(left),
          "y",
          number(top),
          "width",
          number(area.width()),
          "height",
          number(area.height()),
          "overflow",
          "hidden");
    }
    double x =
        switch (text.align()) {
          case START -> area.x();
          case MIDDLE -> area.centreX();
          case END -> area.right();
        };
    String anchor =
        switch (text.align()) {
          case START -> "";
          case MIDDLE -> "middle ";
          case END -> "end ";
        };
    xml.start(
        "text",
        "class",
        anchor + style.word(),
        "x",
        number(x - left),
        "y",
        number(area.y() - top + style.base()));
    String full = clipped && text.full() == null ? text.shown() : text.full();
    if (full != null) {
      xml.element("title", full);
    }
    xml.text(Lettering.isolated(text.shown())).end();
    if (clipped) {
      xml.end();
    }
  }

  private void frame(Frame frame) {
    Area area = frame.area();
    rectangle(area, frame.kind() == Frame.Kind.PAGE_REFERENCE ? area.height() / 2 : 0);
    if (frame.kind() == Frame.Kind.HEAD) {
      rectangle(new Area(area.x() + 2.5, area.y() + 2.5, area.width() - 5, area.height() - 5), 0);
    }
    if (frame.kind() == Frame.Kind.STATION) {
      xml.empty(
          "path",
          "class",
          "thin",
          "d",
          "M" + number(area.x()) + " " + number(area.y() + 2) + "h" + number(area.width()));
    }
  }

  private void rectangle(Area area, double round) {
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
        number(area.height()),
        "rx",
        number(round));
  }

  private void wire(Wire wire) {
    StringBuilder points = new StringBuilder();
    for (Point point : wire.points()) {
      points.append(points.isEmpty() ? "" : " ");
      points.append(number(point.x())).append(',').append(number(point.y()));
    }
    String kind =
        switch (wire.kind()) {
          case CABLE -> "wire";
          case OUTDOOR_CABLE -> "wire outdoor";
          case LEAD -> "lead";
          case DIVIDER -> "thin";
          case LIMIT -> "limit";
          case MARGIN -> "margin";
        };
    xml.empty("polyline", "class", kind, "points", points.toString());
  }
}
