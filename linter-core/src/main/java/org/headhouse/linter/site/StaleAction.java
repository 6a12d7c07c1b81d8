package org.headhouse.linter.site;

/** What a unit does once its outdoor readings are too old. */
public enum StaleAction implements Word {
  CLOSE("close"),
  CLOSE_AND_ALARM("close-and-alarm"),
  HOLD("hold"),
  ALARM("alarm");

  private final String word;

  StaleAction(String word) {
    this.word = word;
  }

  /** Whether the vents are shut then. */
  public boolean closes() {
    return this == CLOSE || this == CLOSE_AND_ALARM;
  }

  @Override
  public String word() {
    return word;
  }
}
