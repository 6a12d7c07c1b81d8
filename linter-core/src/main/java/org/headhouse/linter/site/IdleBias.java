package org.headhouse.linter.site;

/** Whether a receiver needs bias to read an idle pair as idle; a full fail-safe one does not. */
public enum IdleBias implements Word {
  NEEDED("needed"),
  NOT_NEEDED("not-needed");

  private final String word;

  IdleBias(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
