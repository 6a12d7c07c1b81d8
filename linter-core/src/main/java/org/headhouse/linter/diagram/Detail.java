package org.headhouse.linter.diagram;

/** How much of an item a diagram draws. */
public enum Detail {
  /** What is wired to it, with symbols. */
  DRAWN(5, TextStyle.NAME, TextStyle.STRONG, 1),
  /**
   * The same in words, in narrow outlines and in the smallest letters that are read without effort,
   * 7 pt: beside a table that says what is landed.
   */
  IN_WORDS(8, TextStyle.NORMAL, TextStyle.SMALL, 14 / 15.0);

  private final int mostColumns;
  private final TextStyle nameStyle;
  private final TextStyle addressStyle;
  private final double scale;

  Detail(int mostColumns, TextStyle nameStyle, TextStyle addressStyle, double scale) {
    this.mostColumns = mostColumns;
    this.nameStyle = nameStyle;
    this.addressStyle = addressStyle;
    this.scale = scale;
  }

  /** So many items are side by side, unless a word of a name needs more room. */
  int mostColumns() {
    return mostColumns;
  }

  /** The lettering of names. */
  TextStyle nameStyle() {
    return nameStyle;
  }

  /** The lettering of addresses. */
  TextStyle addressStyle() {
    return addressStyle;
  }

  /** The size on paper, where 1 is one px for each px of the drawing. */
  double scale() {
    return scale;
  }
}
