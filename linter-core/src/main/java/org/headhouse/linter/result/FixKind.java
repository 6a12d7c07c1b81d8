package org.headhouse.linter.result;

/** How far a fix can be trusted. */
public enum FixKind {
  /** It follows from the rules alone, and nothing on the site depends on the old text. */
  SAFE("safe"),

  /** It needs a look: work on the site goes with it, or a part that has to be chosen. */
  PROPOSED("proposed");

  private final String word;

  FixKind(String word) {
    this.word = word;
  }

  /** The word as people write it. */
  public String word() {
    return word;
  }

  /** Whether fixes of this kind are wanted by somebody who asks for another kind. */
  public boolean isWithin(FixKind asked) {
    return compareTo(asked) <= 0;
  }
}
