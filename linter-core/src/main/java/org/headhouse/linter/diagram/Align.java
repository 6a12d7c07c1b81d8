package org.headhouse.linter.diagram;

/** How a text is aligned in its area. */
enum Align {
  START,
  MIDDLE,
  END
}
