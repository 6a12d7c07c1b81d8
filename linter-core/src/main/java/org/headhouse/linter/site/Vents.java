package org.headhouse.linter.site;

/** Which vents a unit moves. */
public enum Vents implements Word {
  NONE("none"),
  ROOF("roof"),
  SIDE("side"),
  ROOF_AND_SIDE("roof-and-side");

  private final String word;

  Vents(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
