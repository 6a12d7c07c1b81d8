package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.diagram.Part.Symbol;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.diagram.Part.Wire;
import org.jspecify.annotations.Nullable;

/**
 * One item of the chain with its connection to the trunk: the cable comes in on the left and leaves
 * on the right, through its terminals, or passes by where the item is on a stub.
 *
 * @param stub the length of the branch in words, or null
 * @param toNext the cable to the next item, or null at the end of the line
 */
record Stop(Card card, @Nullable String stub, @Nullable Hop toNext) {

  /** The distance from the trunk down to the outline. */
  static final double DROP = 13;

  /** The same with the length of a stub beside it. */
  static final double DROP_OF_STUB = 24;

  private static final double LEG = 8;

  /** Between the two legs of an item. */
  static final double BETWEEN_LEGS = 2 * LEG;

  double drop() {
    return stub == null ? DROP : DROP_OF_STUB;
  }

  /** How the cable leaves it towards the right. */
  List<Point> out(double centreX, double trunkY, double cardTop) {
    return stub == null
        ? List.of(new Point(centreX + LEG, cardTop), new Point(centreX + LEG, trunkY))
        : List.of(new Point(centreX, trunkY));
  }

  /** How the cable reaches it from the left. */
  List<Point> in(double centreX, double trunkY, double cardTop) {
    return stub == null
        ? List.of(new Point(centreX - LEG, trunkY), new Point(centreX - LEG, cardTop))
        : List.of(new Point(centreX, trunkY));
  }

  void place(double centreX, double trunkY, double cardTop, List<Part> parts) {
    card.place(centreX - card.width() / 2, cardTop, parts);
    if (stub != null) {
      parts.add(
          new Wire(
              List.of(new Point(centreX, trunkY), new Point(centreX, cardTop)), Wire.Kind.CABLE));
      parts.add(new Symbol(Area.around(centreX, trunkY, 6, 6), Symbol.Kind.JUNCTION));
      double room = card.width() - 30;
      parts.add(
          TextPart.fitted(
              "stub " + stub, centreX + 5, trunkY + 8, room, TextStyle.SMALL, Align.START));
    }
  }

  /** All points in one list. */
  static List<Point> joined(List<Point> one, List<Point> between, List<Point> other) {
    List<Point> all = new ArrayList<>(one);
    all.addAll(between);
    all.addAll(other);
    return all;
  }
}
