package org.headhouse.linter.site;

/** How the supervising software reaches the units. */
public enum Link implements Word {
  SERIAL("serial"),
  ETHERNET("ethernet");

  private final String word;

  Link(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
