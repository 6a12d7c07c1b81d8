package org.headhouse.linter.diagram;

import java.util.List;

/**
 * A drawing of the width of a page, or a part of one that is continued below: its parts, each with
 * its place.
 *
 * @param stops the items of the chain that are drawn on it, in order
 */
record Strip(double width, double height, List<Part> parts, List<Stop> stops) {

  Strip {
    parts = List.copyOf(parts);
    stops = List.copyOf(stops);
  }
}
