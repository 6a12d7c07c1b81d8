package org.headhouse.linter.diagram;

import java.util.List;

/** A rectangle on a page, in px; x grows to the right, y downwards. */
record Area(double x, double y, double width, double height) {

  /** The area of some size around a point. */
  static Area around(double centreX, double centreY, double width, double height) {
    return new Area(centreX - width / 2, centreY - height / 2, width, height);
  }

  /** The smallest area that holds some points. */
  static Area of(List<Point> points) {
    double left = points.stream().mapToDouble(Point::x).min().orElseThrow();
    double top = points.stream().mapToDouble(Point::y).min().orElseThrow();
    double right = points.stream().mapToDouble(Point::x).max().orElseThrow();
    double bottom = points.stream().mapToDouble(Point::y).max().orElseThrow();
    return new Area(left, top, right - left, bottom - top);
  }

  double right() {
    return x + width;
  }

  double bottom() {
    return y + height;
  }

  double centreX() {
    return x + width / 2;
  }

  double centreY() {
    return y + height / 2;
  }
}
