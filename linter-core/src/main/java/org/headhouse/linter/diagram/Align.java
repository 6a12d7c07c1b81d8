package org.headhouse.linter.diagram;

/** Where in its area a text begins to be set. */
enum Align {
  START,
  MIDDLE,
  END
}
