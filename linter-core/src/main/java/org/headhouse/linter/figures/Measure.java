package org.headhouse.linter.figures;

/** Which units lengths and temperatures are shown in; everything else is the same everywhere. */
public enum Measure {
  METRIC("metric", "m", 1),
  US("us", "ft", 0.3048);

  private final String word;
  private final String unit;
  private final double metres;

  Measure(String word, String unit, double metres) {
    this.word = word;
    this.unit = unit;
    this.metres = metres;
  }

  /** The word as it is written on the command line. */
  public String word() {
    return word;
  }

  /** The unit of lengths: {@code m} or {@code ft}. */
  public String unit() {
    return unit;
  }

  /** How many of the unit a length is. */
  public double lengthOf(double lengthMetres) {
    return lengthMetres / metres;
  }

  /** The metres that a number of the unit is. */
  public double metres(double length) {
    return length * metres;
  }

  /** A length in words: {@code 42 m}, {@code 137.8 ft}. */
  public String length(double lengthMetres) {
    return this == METRIC ? Shown.metres(lengthMetres) : Shown.feet(lengthMetres);
  }

  /** A temperature in words: {@code 45 °C}, {@code 113 °F}. */
  public String temperature(double celsius) {
    return this == METRIC
        ? Shown.degrees(celsius) + " °C"
        : Shown.degrees(celsius * 1.8 + 32) + " °F";
  }
}
