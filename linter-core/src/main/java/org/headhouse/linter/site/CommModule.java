package org.headhouse.linter.site;

/** Whether a unit has what it needs to reach the line. */
public enum CommModule implements Word {
  FITTED("fitted"),
  BUILT_IN("built-in"),
  ABSENT("absent");

  private final String word;

  CommModule(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
