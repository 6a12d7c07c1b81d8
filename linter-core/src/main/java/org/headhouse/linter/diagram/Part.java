package org.headhouse.linter.diagram;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** Something drawn on a page, and the largest area that it takes. */
sealed interface Part {

  Area area();

  /**
   * One line of text.
   *
   * @param shown what is seen
   * @param full the whole text where what is seen is cut, else null
   */
  record TextPart(Area area, String shown, TextStyle style, Align align, @Nullable String full)
      implements Part {

    /** A text that is cut where it is wider than some room. */
    static TextPart fitted(
        String text, double x, double top, double room, TextStyle style, Align align) {
      return shown(Lettering.fit(text, room, style), text, x, top, room, style, align);
    }

    /** A text that fits, and the one that it was cut from. */
    static TextPart shown(
        String shown,
        String whole,
        double x,
        double top,
        double room,
        TextStyle style,
        Align align) {
      double width = Math.min(room, style.widthOf(shown));
      double left =
          switch (align) {
            case START -> x;
            case MIDDLE -> x + (room - width) / 2;
            case END -> x + room - width;
          };
      return new TextPart(
          new Area(left, top, width, style.line()),
          shown,
          style,
          align,
          shown.equals(whole) ? null : whole);
    }
  }

  /**
   * An outline that holds other parts.
   *
   * @param item the place of its item in the chain, or -1
   */
  record Frame(Area area, Frame.Kind kind, int item) implements Part {
    /** What the outline stands for. */
    enum Kind {
      HEAD,
      UNIT,
      REPEATER,
      STATION
    }
  }

  /** A line from point to point. */
  record Wire(List<Point> points, Wire.Kind kind) implements Part {
    /** How the line is drawn. */
    enum Kind {
      CABLE,
      OUTDOOR_CABLE,
      LEAD,
      DIVIDER,
      LIMIT,
      MARGIN
    }

    public Wire {
      points = List.copyOf(points);
    }

    static Wire lead(Point... points) {
      return new Wire(List.of(points), Wire.Kind.LEAD);
    }

    @Override
    public Area area() {
      return Area.of(points);
    }
  }

  /** A symbol of the trade. */
  record Symbol(Area area, Symbol.Kind kind) implements Part {
    /** IEC 60617 has the first four; a repeater is a box with the triangle of an amplifier. */
    enum Kind {
      RESISTOR,
      CAPACITOR,
      EARTH,
      ARRESTER,
      REPEATER,
      TERMINAL,
      JUNCTION
    }
  }

  /**
   * A value on a curve.
   *
   * @param ringed whether it is the one that matters most
   * @param title what it is, in words
   */
  record Dot(Point at, boolean ringed, String title) implements Part {
    @Override
    public Area area() {
      double size = ringed ? 13 : 5;
      return Area.around(at.x(), at.y(), size, size);
    }
  }

  /** A part of a whole, as a stretch of a bar. */
  record Bar(Area area, Bar.Fill fill) implements Part {
    /** How it differs from its neighbours. */
    enum Fill {
      SOLID,
      LINED,
      EMPTY
    }
  }

  /** The sign of a faulty place. */
  record Sign(Area area, Mark mark) implements Part {
    static final double WIDTH = 27;
    static final double HEIGHT = 21;

    /** To what is written beside it. */
    static final double GAP = 3;

    static Sign at(double left, double top, Mark mark) {
      return new Sign(new Area(left, top, WIDTH, HEIGHT), mark);
    }
  }
}
