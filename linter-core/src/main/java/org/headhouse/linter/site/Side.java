package org.headhouse.linter.site;

/** A side of a repeater; any other item has the same connection on both. */
public enum Side implements Word {
  IN("in"),
  OUT("out");

  private final String word;

  Side(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
