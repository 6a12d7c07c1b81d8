package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;

/**
 * Some items side by side, under the trunk.
 *
 * @param stops from left to right
 * @param pitch from the middle of one to that of the next
 */
record ChainRow(List<Stop> stops, double pitch) {
  private static final double OVER_TRUNK = 8;

  ChainRow {
    stops = List.copyOf(stops);
  }

  /** The rows of a line, each filled before the next begins. */
  static List<ChainRow> of(List<Stop> stops, double width) {
    List<ChainRow> rows = new ArrayList<>();
    if (stops.isEmpty()) {
      return rows;
    }
    double room = width - 2 * Trunk.GUTTER;
    int columns = (int) (room / (stops.get(0).card().width() + CardWidth.BETWEEN));
    for (int from = 0; from < stops.size(); from += columns) {
      List<Stop> some = stops.subList(from, Math.min(from + columns, stops.size()));
      rows.add(new ChainRow(some, room / columns));
    }
    return rows;
  }

  /** From the top of the row to the trunk, with room for the lengths of cable. */
  private double overTrunk() {
    double labels = 0;
    for (Stop stop : stops.subList(0, stops.size() - 1)) {
      Hop hop = stop.toNext();
      labels = Math.max(labels, hop == null ? 0 : Trunk.labelHeight(hop));
    }
    return labels + OVER_TRUNK;
  }

  private double drop() {
    return stops.stream().mapToDouble(Stop::drop).max().orElse(0);
  }

  double height() {
    return overTrunk()
        + drop()
        + stops.stream().mapToDouble(stop -> stop.card().height()).max().orElse(0);
  }

  Stop first() {
    return stops.get(0);
  }

  Stop last() {
    return stops.get(stops.size() - 1);
  }

  double trunkY(double top) {
    return top + overTrunk();
  }

  /** How the cable reaches the first item of the row. */
  List<Point> in(double top) {
    return first().in(centreX(0), trunkY(top), trunkY(top) + drop());
  }

  /** How the cable leaves the last item of the row. */
  List<Point> out(double top) {
    return last().out(centreX(stops.size() - 1), trunkY(top), trunkY(top) + drop());
  }

  private double centreX(int column) {
    return Trunk.GUTTER + pitch * (column + 0.5);
  }

  void place(double top, List<Part> parts) {
    double trunkY = trunkY(top);
    double cardTop = trunkY + drop();
    for (int column = 0; column < stops.size(); column++) {
      Stop stop = stops.get(column);
      stop.place(centreX(column), trunkY, cardTop, parts);
      Hop hop = stop.toNext();
      if (hop != null && column < stops.size() - 1) {
        Trunk.between(
            hop,
            stop.out(centreX(column), trunkY, cardTop),
            stops.get(column + 1).in(centreX(column + 1), trunkY, cardTop),
            parts);
      }
    }
  }
}
