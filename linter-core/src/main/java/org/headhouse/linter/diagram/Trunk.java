package org.headhouse.linter.diagram;

import static org.headhouse.linter.diagram.Stop.joined;

import java.util.List;
import org.headhouse.linter.diagram.Part.Frame;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.Symbol;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.diagram.Part.Wire;
import org.jspecify.annotations.Nullable;

/** The cables: between neighbours of a row, back to the next row, and to other pages. */
final class Trunk {
  /** The room at both edges of a page in which the cable turns back. */
  static final double GUTTER = 16;

  /** The room between two rows for the cable that turns back. */
  static final double CHANNEL = 34;

  private static final double TURN = 7;
  private static final double CHANNEL_LINE = 25;
  private static final double ARRESTER = 12;
  private static final double OFF_ITEM = 16;
  private static final double FROM_EDGE = 26;
  private static final double REFERENCE_HEIGHT = 17;
  private static final TextStyle TEXT = TextStyle.SMALL;

  private Trunk() {}

  /** The height of what is written over a cable in a row. */
  static double labelHeight(Hop hop) {
    double first = hop.mark() == null ? TEXT.line() : Sign.HEIGHT;
    return first + (hop.lines().size() - 1) * TEXT.line();
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
    double firstLine = hop.mark() == null ? TEXT.line() : Sign.HEIGHT;
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
    double sign = mark == null ? 0 : Sign.WIDTH + 3;
    double width = Math.min(TEXT.widthOf(text), room - sign);
    double left = centre - (width + sign) / 2;
    if (mark != null) {
      parts.add(Sign.at(left, top + height - Sign.HEIGHT, mark));
    }
    double lineTop = top + (height - TEXT.line()) / 2;
    parts.add(TextPart.fitted(text, left + sign, lineTop, width, TEXT, Align.START));
  }

  /** The cable from the end of a row to the start of the next, through the channel between. */
  static void back(
      Hop hop, List<Point> out, List<Point> in, double channelTop, double width, List<Part> parts) {
    double y = channelTop + CHANNEL_LINE;
    double right = width - TURN;
    List<Point> turn =
        List.of(
            new Point(right, out.get(out.size() - 1).y()),
            new Point(right, y),
            new Point(TURN, y),
            new Point(TURN, in.get(0).y()));
    parts.add(new Wire(joined(out, turn, in), hop.kind()));
    if (hop.arrested()) {
      arrester(right - FROM_EDGE, y, parts);
      arrester(TURN + FROM_EDGE, y, parts);
    }
    double height = hop.mark() == null ? TEXT.line() : Sign.HEIGHT;
    String text = String.join(", ", hop.lines());
    double room = width - 4 * FROM_EDGE;
    labelWithMark(hop.mark(), text, width / 2, y - 3 - height, room, height, parts);
  }

  /** The cable from the end of a page's last row to another page. */
  static void away(
      Hop hop,
      String reference,
      List<Point> out,
      double channelTop,
      double width,
      List<Part> parts) {
    double y = channelTop + CHANNEL_LINE;
    double right = width - TURN;
    double end = right - 2 * FROM_EDGE;
    TextPart label = referenceWords(reference + ", " + String.join(", ", hop.lines()), width, y);
    double left = end - label.area().width() - 16;
    List<Point> turn =
        List.of(
            new Point(right, out.get(out.size() - 1).y()), new Point(right, y), new Point(end, y));
    parts.add(new Wire(joined(out, turn, List.of()), hop.kind()));
    reference(label, left, y, parts);
    if (hop.arrested()) {
      arrester(right - FROM_EDGE, y, parts);
    }
    Mark mark = hop.mark();
    if (mark != null) {
      parts.add(Sign.at(left - Sign.WIDTH - 4, y - Sign.HEIGHT / 2 - 2, mark));
    }
  }

  /** The cable from another page to the start of a page's first row. */
  static void here(
      Hop hop,
      String reference,
      List<Point> in,
      double channelTop,
      double width,
      List<Part> parts) {
    double y = channelTop + CHANNEL_LINE;
    double start = TURN + 2 * FROM_EDGE;
    List<Point> turn =
        List.of(new Point(start, y), new Point(TURN, y), new Point(TURN, in.get(0).y()));
    parts.add(new Wire(joined(List.of(), turn, in), hop.kind()));
    TextPart label = referenceWords(reference + ", " + String.join(", ", hop.lines()), width, y);
    reference(label, start, y, parts);
    if (hop.arrested()) {
      arrester(TURN + FROM_EDGE, y, parts);
    }
  }

  private static TextPart referenceWords(String text, double width, double y) {
    double room = width - 8 * FROM_EDGE;
    return TextPart.fitted(text, 0, y - TEXT.line() / 2, room, TEXT, Align.START);
  }

  private static void reference(TextPart label, double left, double y, List<Part> parts) {
    Area at = label.area();
    parts.add(
        new Frame(
            new Area(left, y - REFERENCE_HEIGHT / 2, at.width() + 16, REFERENCE_HEIGHT),
            Frame.Kind.PAGE_REFERENCE,
            -1));
    Area moved = new Area(left + 8, at.y(), at.width(), at.height());
    parts.add(new TextPart(moved, label.shown(), TEXT, Align.START, label.full()));
  }

  private static void arrester(double x, double y, List<Part> parts) {
    parts.add(new Symbol(Area.around(x, y, ARRESTER, ARRESTER), Symbol.Kind.ARRESTER));
  }
}
