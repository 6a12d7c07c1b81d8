package org.headhouse.linter.diagram;

import java.util.Comparator;
import java.util.List;
import org.headhouse.linter.diagram.LineProfile.Value;
import org.headhouse.linter.diagram.Part.Dot;
import org.headhouse.linter.diagram.Part.TextPart;
import org.headhouse.linter.diagram.Part.Wire;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.Levels;

/**
 * One curve of voltages over the distance, with the threshold of a receiver and the margin.
 *
 * @param repeaters where one stretch ends and the next begins
 * @param margin over the threshold, in volts; 0 for none
 * @param distances from metres to places
 * @param left where it begins
 * @param width from there to its end
 */
record VoltagePanel(
    String title,
    List<List<Value>> stretches,
    List<Value> repeaters,
    double margin,
    Scale distances,
    double left,
    double width,
    Measure measure) {
  /** The room left of the axis. */
  static final double LEFT = 56;

  /** The room right of the curve, for the names of the limits. */
  static final double RIGHT = 124;

  /** From the foot of the curve to the next panel. */
  static final double GAP = 20;

  private static final double TITLE = 36;
  private static final double LEAST_ROOM_FOR_A_NAME = 30;
  private static final double PLOT = 92;
  private static final int MOST_STEPS = 5;
  private static final double MILLI = 1e3;
  private static final TextStyle SMALL = TextStyle.SMALL;

  double height() {
    return head() + PLOT;
  }

  private double head() {
    return TITLE + (repeaters.isEmpty() ? 0 : SMALL.line());
  }

  private Value lowest() {
    return stretches.stream()
        .flatMap(List::stream)
        .min(Comparator.comparingDouble(Value::volts))
        .orElseThrow();
  }

  /** What is to be seen, in words. */
  String description() {
    Value lowest = lowest();
    return title
        + ": lowest "
        + Shown.volts(lowest.volts())
        + " at "
        + Lettering.isolated(lowest.name())
        + ", needed "
        + Shown.volts(Levels.RECEIVER_THRESHOLD_VOLTS)
        + (margin > 0
            ? ", with margin " + Shown.volts(Levels.RECEIVER_THRESHOLD_VOLTS + margin)
            : "")
        + ".";
  }

  void place(double top, List<Part> parts) {
    Value lowest = lowest();
    parts.add(TextPart.fitted(title, left, top, width - 4, TextStyle.STRONG, Align.START));
    String note =
        "lowest "
            + Shown.volts(lowest.volts())
            + " at "
            + Shown.plain(Math.rint(measure.lengthOf(lowest.metres())))
            + " "
            + measure.unit()
            + ", in the ring: "
            + lowest.name();
    double noteTop = top + TextStyle.STRONG.line() + 1;
    parts.add(TextPart.fitted(note, left, noteTop, width - 4, TextStyle.NORMAL, Align.START));
    double bottom = top + height();
    double most =
        stretches.stream().flatMap(List::stream).mapToDouble(Value::volts).max().orElse(0);
    double wanted = Levels.RECEIVER_THRESHOLD_VOLTS + margin;
    Scale volts =
        Scale.over(
            Math.min(0, lowest.volts()) * MILLI,
            Math.max(most, wanted) * MILLI,
            MOST_STEPS,
            bottom,
            top + head());
    axis(volts, bottom, parts);
    repeaters(top + head(), parts);
    double right = left + width - RIGHT;
    limit(Levels.RECEIVER_THRESHOLD_VOLTS, Wire.Kind.LIMIT, volts, right, parts);
    if (margin > 0) {
      limit(wanted, Wire.Kind.MARGIN, volts, right, parts);
    }
    for (List<Value> stretch : stretches) {
      curve(stretch, lowest, volts, parts);
    }
  }

  private void axis(Scale volts, double bottom, List<Part> parts) {
    for (double tick : volts.ticks()) {
      double y = volts.at(tick);
      String text = Shown.plain(tick) + " mV";
      parts.add(TextPart.fitted(text, left, y - SMALL.line() / 2, LEFT - 5, SMALL, Align.END));
      parts.add(across(y, left + width - RIGHT, Wire.Kind.DIVIDER));
    }
    parts.add(Wire.lead(new Point(left + LEFT, volts.end()), new Point(left + LEFT, bottom)));
  }

  /** Names above the curve, where there is room before the next. */
  private void repeaters(double top, List<Part> parts) {
    for (int i = 0; i < repeaters.size(); i++) {
      double x = place(repeaters.get(i));
      double end = i == repeaters.size() - 1 ? left + width - 4 : place(repeaters.get(i + 1)) - 4;
      parts.add(
          new Wire(
              List.of(new Point(x, top - SMALL.line()), new Point(x, top + PLOT)),
              Wire.Kind.DIVIDER));
      if (end - x > LEAST_ROOM_FOR_A_NAME) {
        String text = "repeater " + repeaters.get(i).name();
        double room = end - x - 3;
        parts.add(TextPart.fitted(text, x + 3, top - SMALL.line() - 1, room, SMALL, Align.START));
      }
    }
  }

  private double place(Value value) {
    return distances.at(measure.lengthOf(value.metres()));
  }

  private Wire across(double y, double right, Wire.Kind kind) {
    return new Wire(List.of(new Point(left + LEFT, y), new Point(right, y)), kind);
  }

  /**
   * The label of the threshold is below its line and that of the margin above, so that they never
   * overlap.
   */
  private void limit(double limit, Wire.Kind kind, Scale volts, double right, List<Part> parts) {
    double y = volts.at(limit * MILLI);
    boolean threshold = kind == Wire.Kind.LIMIT;
    String text = Shown.volts(limit) + (threshold ? " needed" : " with margin");
    double top = threshold ? y : y - SMALL.line();
    parts.add(across(y, right + 6, kind));
    parts.add(TextPart.fitted(text, right + 10, top, RIGHT - 10, SMALL, Align.START));
  }

  private void curve(List<Value> values, Value lowest, Scale volts, List<Part> parts) {
    List<Point> points =
        values.stream()
            .map(value -> new Point(place(value), volts.at(value.volts() * MILLI)))
            .toList();
    parts.add(new Wire(points, Wire.Kind.LEAD));
    for (int i = 0; i < points.size(); i++) {
      Value value = values.get(i);
      String label =
          Lettering.isolated(value.name())
              + ", at "
              + measure.length(value.metres())
              + ": "
              + Shown.volts(value.volts());
      parts.add(new Dot(points.get(i), value.equals(lowest), label));
    }
  }
}
