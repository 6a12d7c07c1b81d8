package org.headhouse.linter.report;

/** The paper that sheets are printed on. */
public enum Paper {
  A4("A4"),
  LETTER("Letter");

  private final String word;

  Paper(String word) {
    this.word = word;
  }

  /** The name of the size, as the trade and CSS have it. */
  public String word() {
    return word;
  }
}
