package org.headhouse.linter.site;

/** Whether both ends of a run have surge protection. */
public enum SurgeProtection implements Word {
  NONE("none"),
  FITTED("fitted");

  private final String word;

  SurgeProtection(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
