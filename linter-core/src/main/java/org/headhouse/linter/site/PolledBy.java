package org.headhouse.linter.site;

/** Who asks a piece of equipment. */
public enum PolledBy implements Word {
  HEAD("head"),
  SUPERVISION("supervision");

  private final String word;

  PolledBy(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
