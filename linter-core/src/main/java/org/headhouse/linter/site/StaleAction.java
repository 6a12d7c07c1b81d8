package org.headhouse.linter.site;

/** What a unit does once its outdoor readings are too old. */
public enum StaleAction implements Word {
  CLOSE("close"),
  HOLD("hold"),
  ALARM("alarm");

  private final String word;

  StaleAction(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
