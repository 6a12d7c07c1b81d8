package org.headhouse.linter.site;

/** A conductor of the line, named after the mark of the terminal that it is landed on. */
public enum Conductor implements Word {
  A("A"),
  B("B"),
  G("G"),
  /** The common of the interfaces; G is the drain of the shield. */
  C("C");

  private final String word;

  Conductor(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
