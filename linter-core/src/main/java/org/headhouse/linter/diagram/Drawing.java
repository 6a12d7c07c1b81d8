package org.headhouse.linter.diagram;

import static org.headhouse.linter.diagram.SvgDocument.move;
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

/** Writes the parts of a layout as SVG, each at its place. */
final class Drawing {
  private final SvgDocument svg;
  private final Symbols symbols;

  private Drawing(SvgDocument svg) {
    this.svg = svg;
    this.symbols = new Symbols(svg);
  }

  /**
   * The text of a drawing.
   *
   * @param prefix of its ids
   * @param description what is to be seen, in words
   */
  static String svg(Strip page, String prefix, String title, String description) {
    SvgDocument svg = new SvgDocument(page.width(), page.height(), prefix, title, description);
    new Drawing(svg).add(page.parts());
    return svg.finish();
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
      symbols.write(symbol);
    } else if (part instanceof Sign sign) {
      symbols.write(sign);
    } else if (part instanceof Dot dot) {
      symbols.write(dot);
    } else if (part instanceof Bar bar) {
      symbols.write(bar);
    }
    svg.xml().newLine();
  }

  /** Text whose size depends on the font is clipped to its area by a nested {@code svg}. */
  private void text(TextPart text) {
    XmlWriter xml = svg.xml();
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
    outline(area);
    if (frame.kind() == Frame.Kind.HEAD) {
      outline(new Area(area.x() + 2.5, area.y() + 2.5, area.width() - 5, area.height() - 5));
    }
    if (frame.kind() == Frame.Kind.STATION) {
      svg.path("thin", move(area.x(), area.y() + 2) + "h" + number(area.width()));
    }
  }

  private void outline(Area area) {
    svg.rectangle("frame", area);
  }

  private void wire(Wire wire) {
    String kind =
        switch (wire.kind()) {
          case CABLE -> "wire";
          case OUTDOOR_CABLE -> "wire outdoor";
          case LEAD -> "lead";
          case DIVIDER -> "thin";
          case LIMIT -> "limit";
          case MARGIN -> "margin";
        };
    svg.polyline(kind, wire.points());
  }
}
