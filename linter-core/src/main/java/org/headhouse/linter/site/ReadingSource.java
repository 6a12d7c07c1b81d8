package org.headhouse.linter.site;

/** Where a unit takes a reading from. */
public enum ReadingSource implements Word {
  LOCAL("local"),
  HEAD("head"),
  NONE("none");

  private final String word;

  ReadingSource(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
