package org.headhouse.linter.diagram;

import java.util.List;
import org.headhouse.linter.diagram.Part.Symbol;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.diagram.Part.Wire;

/** One row inside the outline of an item. */
sealed interface CardRow {

  double height();

  /**
   * Adds the row's parts below a corner.
   *
   * @param inner the width that there is
   */
  void place(double left, double top, double inner, List<Part> parts);

  /**
   * A line of text.
   *
   * @param shown cut to the room there is where it is wider
   * @param whole the text that it is a line of
   */
  record Line(String shown, String whole, TextStyle style) implements CardRow {

    static Line of(String text, TextStyle style) {
      return new Line(text, text, style);
    }

    @Override
    public double height() {
      return style.line();
    }

    @Override
    public void place(double left, double top, double inner, List<Part> parts) {
      String fitting = Lettering.fit(shown, inner, style);
      parts.add(TextPart.shown(fitting, whole, left, top, inner, style, Align.START));
    }
  }

  /** The word for a repeater, with its symbol. */
  record RepeaterHead() implements CardRow {
    @Override
    public double height() {
      return 16;
    }

    @Override
    public void place(double left, double top, double inner, List<Part> parts) {
      parts.add(new Symbol(new Area(left, top + 1, 20, 12), Symbol.Kind.REPEATER));
      parts.add(TextPart.fitted("repeater", left + 23, top, 62, TextStyle.STRONG, Align.START));
    }
  }

  /** Room for the sign of a faulty item above its text. */
  record Blank() implements CardRow {
    @Override
    public double height() {
      return Part.Sign.HEIGHT;
    }

    @Override
    public void place(double left, double top, double inner, List<Part> parts) {}
  }

  /** A thin line across. */
  record Divider() implements CardRow {
    @Override
    public double height() {
      return 7;
    }

    @Override
    public void place(double left, double top, double inner, List<Part> parts) {
      double y = top + 4;
      parts.add(
          new Wire(
              List.of(new Point(left - Card.PADDING, y), new Point(left + inner + Card.PADDING, y)),
              Wire.Kind.DIVIDER));
    }
  }

  /** A resistor between D1 and D0, alone or with a capacitor. */
  record Terminator(boolean capacitor) implements CardRow {
    @Override
    public double height() {
      return TextStyle.SMALL.line() + 2;
    }

    @Override
    public void place(double left, double top, double inner, List<Part> parts) {
      double y = top + height() / 2;
      Leads.place("D1", "D0", left, y, inner, parts);
      double centre = left + inner / 2;
      parts.add(
          new Symbol(
              Area.around(capacitor ? centre - 12 : centre, y, 24, 9), Symbol.Kind.RESISTOR));
      if (capacitor) {
        parts.add(new Symbol(Area.around(centre + 18, y, 5, 12), Symbol.Kind.CAPACITOR));
      }
    }
  }

  /**
   * A resistor from a conductor to the supply or to common.
   *
   * @param conductor D0 or D1
   * @param to what it is tied to
   */
  record BiasResistor(String conductor, String to) implements CardRow {
    @Override
    public double height() {
      return TextStyle.SMALL.line() + 2;
    }

    @Override
    public void place(double left, double top, double inner, List<Part> parts) {
      double y = top + height() / 2;
      Leads.place(conductor, to, left, y, inner, parts);
      parts.add(new Symbol(Area.around(left + 42, y, 20, 9), Symbol.Kind.RESISTOR));
    }
  }

  /** The one point where the common of the line meets protective earth. */
  record Earth() implements CardRow {
    @Override
    public double height() {
      return 2 * TextStyle.SMALL.line() + 2;
    }

    @Override
    public void place(double left, double top, double inner, List<Part> parts) {
      double y = top + 2 + TextStyle.SMALL.line() / 2;
      parts.add(Leads.mark("G", left, y, 10));
      parts.add(new Symbol(Area.around(left + 15, y, 5, 5), Symbol.Kind.TERMINAL));
      parts.add(
          Wire.lead(
              new Point(left + 17.5, y), new Point(left + 30, y), new Point(left + 30, y + 3)));
      parts.add(new Symbol(new Area(left + 21, y + 3, 18, 13), Symbol.Kind.EARTH));
      double text = left + 44;
      double room = inner - 44;
      TextStyle style = TextStyle.SMALL;
      parts.add(TextPart.fitted("to earth", text, top + 1, room, style, Align.START));
      parts.add(
          TextPart.fitted("only here", text, top + 1 + style.line(), room, style, Align.START));
    }
  }

  /** A lead between two named terminals, on which symbols are drawn. */
  final class Leads {
    private static final double LEFT = 18;

    private Leads() {}

    static void place(
        String from, String to, double left, double y, double inner, List<Part> parts) {
      double toWidth = TextStyle.SMALL.widthOf(to);
      double end = left + inner - toWidth - 8;
      parts.add(mark(from, left, y, LEFT));
      parts.add(new Symbol(Area.around(left + LEFT + 2.5, y, 5, 5), Symbol.Kind.TERMINAL));
      parts.add(Wire.lead(new Point(left + LEFT + 5, y), new Point(end, y)));
      parts.add(new Symbol(Area.around(end + 2.5, y, 5, 5), Symbol.Kind.TERMINAL));
      parts.add(mark(to, left + inner - toWidth, y, toWidth));
    }

    static TextPart mark(String text, double left, double y, double room) {
      TextStyle style = TextStyle.SMALL;
      return TextPart.fitted(text, left, y - style.line() / 2, room, style, Align.START);
    }
  }
}
