package org.headhouse.linter.site;

/** The parity bit of a character. */
public enum Parity implements Word {
  EVEN("even"),
  ODD("odd"),
  NONE("none");

  private final String word;

  Parity(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
