package org.headhouse.linter.site;

/** Which way is measured from where the chain was opened. */
public enum Toward implements Word {
  /** Towards the head unit. */
  HEAD("head"),
  /** Away from it. */
  END("end");

  private final String word;

  Toward(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
