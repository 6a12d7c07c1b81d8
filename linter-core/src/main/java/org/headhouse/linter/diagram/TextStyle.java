package org.headhouse.linter.diagram;

import java.util.Locale;

/** The sizes of lettering on a drawing; the smallest prints as 7.5 pt. */
enum TextStyle {
  TITLE(14, true),
  NAME(12, false),
  STRONG(11, true),
  NORMAL(11, false),
  SMALL(10, false);

  private static final double LINE = 1.25;
  private static final double BASE = 0.96;

  private final double size;
  private final boolean bold;

  TextStyle(double size, boolean bold) {
    this.size = size;
    this.bold = bold;
  }

  /** Its class in the style sheet. */
  String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  double size() {
    return size;
  }

  boolean bold() {
    return bold;
  }

  /** The height of a line. */
  double line() {
    return size * LINE;
  }

  /** From the top of a line down to its baseline. */
  double base() {
    return size * BASE;
  }

  /** The greatest width of a text. */
  double widthOf(String text) {
    return Lettering.ems(text) * size * (bold ? Lettering.BOLD : 1);
  }
}
