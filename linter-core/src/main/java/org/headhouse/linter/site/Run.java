package org.headhouse.linter.site;

/** Where a run of cable lies. */
public enum Run implements Word {
  INSIDE("inside"),
  BETWEEN_BUILDINGS("between-buildings");

  private final String word;

  Run(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
