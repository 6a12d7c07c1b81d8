package org.headhouse.linter.diagram;

import static org.headhouse.linter.diagram.Stop.joined;

import java.util.List;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.Symbol;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.diagram.Part.Wire;
import org.jspecify.annotations.Nullable;

/** The cables: between neighbours of a row, and back to the next row. */
final class Trunk {
  /** The room at both edges of a strip in which the cable turns back. */
  static final double GUTTER = 16;

  private static final double TURN = 7;
  private static final double UNDER_LINE = 9;
  private static final double OVER_LINE = 3;
  private static final double OVER_LABEL = 1;
  private static final double ARRESTER = 12;
  private static final double OFF_ITEM = 16;
  private static final double FROM_EDGE = 26;
  private static final TextStyle TEXT = TextStyle.SMALL;

  private Trunk() {}

  /** The height of what is written over a cable in a row. */
  static double labelHeight(Hop hop) {
    return heightOfLine(hop) + (hop.lines().size() - 1) * TEXT.line();
  }

  /** The room between two rows for a cable that turns back, with what is written over it. */
  static double channel(Hop hop) {
    return OVER_LABEL + heightOfLine(hop) + OVER_LINE + UNDER_LINE;
  }

  private static double heightOfLine(Hop hop) {
    return hop.mark() == null ? TEXT.line() : Sign.HEIGHT;
  }

  /** The cable between two neighbours of a row. */
  static void between(Hop hop, List<Point> out, List<Point> in, List<Part> parts) {
    parts.add(new Wire(joined(out, List.of(), in), hop.kind()));
    Point from = out.get(out.size() - 1);
    Point to = in.get(0);
    if (hop.arrested()) {
      arrester(from.x() + OFF_ITEM, from.y(), parts);
      arrester(to.x() - OFF_ITEM, to.y(), parts);
    }
    double centre = (from.x() + to.x()) / 2;
    double top = from.y() - 7 - labelHeight(hop);
    double firstLine = heightOfLine(hop);
    double room = to.x() - from.x();
    List<String> lines = hop.lines();
    labelWithMark(hop.mark(), lines.get(0), centre, top, room, firstLine, parts);
    for (int i = 1; i < lines.size(); i++) {
      double lineTop = top + firstLine + (i - 1) * TEXT.line();
      parts.add(
          TextPart.fitted(lines.get(i), centre - room / 2, lineTop, room, TEXT, Align.MIDDLE));
    }
  }

  /** The sign and the text to the right of it, centred as one. */
  private static void labelWithMark(
      @Nullable Mark mark,
      String text,
      double centre,
      double top,
      double room,
      double height,
      List<Part> parts) {
    double sign = mark == null ? 0 : Sign.WIDTH + Sign.GAP;
    double width = Math.min(TEXT.widthOf(text), room - sign);
    double left = centre - (width + sign) / 2;
    if (mark != null) {
      parts.add(Sign.at(left, top + height - Sign.HEIGHT, mark));
    }
    double lineTop = top + (height - TEXT.line()) / 2;
    parts.add(TextPart.fitted(text, left + sign, lineTop, width, TEXT, Align.START));
  }

  /** The cable from the end of a row to the lower edge of its strip, below a channel. */
  static void leave(Hop hop, List<Point> out, double channelTop, double width, List<Part> parts) {
    double y = channelTop + channel(hop) - UNDER_LINE;
    double right = width - TURN;
    List<Point> turn =
        List.of(
            new Point(right, out.get(out.size() - 1).y()),
            new Point(right, y),
            new Point(TURN, y),
            new Point(TURN, channelTop + channel(hop)));
    parts.add(new Wire(joined(out, turn, List.of()), hop.kind()));
    if (hop.arrested()) {
      arrester(right - FROM_EDGE, y, parts);
      arrester(TURN + FROM_EDGE, y, parts);
    }
    double height = heightOfLine(hop);
    String text = String.join(", ", hop.words());
    double room = width - 4 * FROM_EDGE;
    labelWithMark(hop.mark(), text, width / 2, y - OVER_LINE - height, room, height, parts);
  }

  /** The cable from the upper edge of a strip to the start of its row. */
  static void enter(Hop hop, List<Point> in, List<Part> parts) {
    List<Point> turn = List.of(new Point(TURN, 0), new Point(TURN, in.get(0).y()));
    parts.add(new Wire(joined(List.of(), turn, in), hop.kind()));
  }

  private static void arrester(double x, double y, List<Part> parts) {
    parts.add(new Symbol(Area.around(x, y, ARRESTER, ARRESTER), Symbol.Kind.ARRESTER));
  }
}
