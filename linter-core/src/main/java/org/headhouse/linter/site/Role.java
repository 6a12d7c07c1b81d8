package org.headhouse.linter.site;

/** What a unit is on the line. */
public enum Role implements Word {
  HEAD("head"),
  FOLLOWER("follower");

  private final String word;

  Role(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
