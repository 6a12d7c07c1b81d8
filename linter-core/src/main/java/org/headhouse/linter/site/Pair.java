package org.headhouse.linter.site;

/** How the pair is landed: A on A, or A of the cable on the terminal marked B. */
public enum Pair implements Word {
  STRAIGHT("straight"),
  CROSSED("crossed");

  private final String word;

  Pair(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
