package org.headhouse.linter.site;

/** What equipment does with a request to all. */
public enum BroadcastHandling implements Word {
  IGNORED("ignored"),
  OBEYED("obeyed");

  private final String word;

  BroadcastHandling(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
