package org.headhouse.linter.diagram;

/** A place on a page, in px; x grows to the right, y downwards. */
record Point(double x, double y) {}
