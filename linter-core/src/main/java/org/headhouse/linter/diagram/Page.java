package org.headhouse.linter.diagram;

import java.util.List;

/**
 * One page of a drawing: its parts, each with its place.
 *
 * @param stops the items of the chain that are drawn on it, in order
 */
record Page(double width, double height, List<Part> parts, List<Stop> stops) {

  Page {
    parts = List.copyOf(parts);
    stops = List.copyOf(stops);
  }
}
