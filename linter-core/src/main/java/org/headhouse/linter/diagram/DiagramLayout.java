package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;

/**
 * Lays a line out in strips, one under the other.
 *
 * <p>Every row is read from left to right, and the cable turns back between two rows. So "in" is
 * always left and "out" always right, as at the terminals, and addresses rise from left to right.
 * If the cable ran to and fro, every other row would be reversed.
 *
 * <p>Each row is a strip of its own: the cable leaves one at its lower edge and enters the next at
 * the same place of its upper edge, so that paper may end between any two.
 */
final class DiagramLayout {
  private static final double UNDER = 6;

  private DiagramLayout() {}

  /** The strips of a line; at least one, the first with the heading. */
  static List<Strip> of(Heading heading, List<Stop> stops, double width) {
    List<ChainRow> rows = ChainRow.of(stops, width);
    List<Strip> strips = new ArrayList<>();
    for (int i = 0; i < Math.max(1, rows.size()); i++) {
      List<Part> parts = new ArrayList<>();
      double bottom = 0;
      if (i == 0) {
        heading.place(width, parts);
        bottom = heading.height(width);
      }
      if (i < rows.size()) {
        ChainRow row = rows.get(i);
        double top = bottom;
        row.place(top, parts);
        bottom += row.height();
        if (i > 0) {
          Trunk.enter(hop(rows.get(i - 1)), row.in(top), parts);
        }
        if (i < rows.size() - 1) {
          Trunk.leave(hop(row), row.out(top), bottom, width, parts);
          bottom += Trunk.channel(hop(row));
        } else {
          bottom += UNDER;
        }
      }
      strips.add(
          new Strip(
              width, Math.ceil(bottom), parts, i < rows.size() ? rows.get(i).stops() : List.of()));
    }
    return strips;
  }

  private static Hop hop(ChainRow previous) {
    Hop hop = previous.last().toNext();
    if (hop == null) {
      throw new IllegalStateException("the line ends within its rows");
    }
    return hop;
  }
}
