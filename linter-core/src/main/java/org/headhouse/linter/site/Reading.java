package org.headhouse.linter.site;

/** An outdoor quantity that a weather station measures. */
public enum Reading implements Word {
  LIGHT("light"),
  TEMPERATURE("temperature"),
  HUMIDITY("humidity"),
  WIND_SPEED("wind-speed"),
  WIND_DIRECTION("wind-direction"),
  RAIN("rain");

  private final String word;

  Reading(String word) {
    this.word = word;
  }

  @Override
  public String word() {
    return word;
  }
}
