package org.headhouse.linter.site;

/** How the supervising software reaches the units. */
public enum Link implements Word {
  SERIAL("serial"),
  ETHERNET("ethernet"),
  THROUGH_HEAD("through-head");

  private final String word;

  Link(String word) {
    this.word = word;
  }

  /** Whether polls go over the line: those of the software itself, or of the head unit for it. */
  public boolean loadsLine() {
    return this != ETHERNET;
  }

  @Override
  public String word() {
    return word;
  }
}
