package org.headhouse.linter.diagram;

import java.util.List;
import org.headhouse.linter.diagram.Part.Frame;
import org.headhouse.linter.diagram.Part.Sign;
import org.headhouse.linter.diagram.Part.Wire;
import org.jspecify.annotations.Nullable;

/**
 * The content of one outline, with what hangs below it.
 *
 * @param item the place in the chain
 * @param width of the outline
 * @param mark what is wrong there, or null
 * @param below the card of the weather station wired to it, or null
 */
record Card(
    int item,
    Frame.Kind kind,
    double width,
    List<CardRow> rows,
    @Nullable Mark mark,
    @Nullable Card below) {
  static final double PADDING = 5;

  private static final double LEAD = 12;
  private static final double ABOVE = 5;
  private static final double UNDER = 4;

  Card {
    rows = List.copyOf(rows);
  }

  private double ownHeight() {
    return ABOVE + rows.stream().mapToDouble(CardRow::height).sum() + UNDER;
  }

  double height() {
    return ownHeight() + (below == null ? 0 : LEAD + below.height());
  }

  void place(double left, double top, List<Part> parts) {
    parts.add(new Frame(new Area(left, top, width, ownHeight()), kind, item));
    if (mark != null) {
      parts.add(Sign.at(left + width - Sign.WIDTH - 3, top + 3, mark));
    }
    double y = top + ABOVE;
    for (CardRow row : rows) {
      row.place(left + PADDING, y, width - 2 * PADDING, parts);
      y += row.height();
    }
    if (below != null) {
      double bottom = top + ownHeight();
      double x = left + width / 2;
      parts.add(Wire.lead(new Point(x, bottom), new Point(x, bottom + LEAD)));
      below.place(left, bottom + LEAD, parts);
    }
  }
}
