package org.headhouse.linter.site;

/** How far a site has come. */
public enum Stage implements Word {
  PLANNED("planned"),
  COMMISSIONED("commissioned");

  private final String word;

  Stage(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
