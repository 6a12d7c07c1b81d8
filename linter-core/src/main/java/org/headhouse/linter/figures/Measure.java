package org.headhouse.linter.figures;

import org.headhouse.linter.stability.Internal;

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

  /** A length rounded down, so that it stays within a limit: {@code 759 m}, {@code 2490 ft}. */
  @Internal
  public String atMost(double lengthMetres) {
    return this == METRIC ? Shown.atMostMetres(lengthMetres) : Shown.atMostFeet(lengthMetres);
  }

  /** A length that a standard gives in metres: {@code 20 m}, {@code 65.6 ft (20 m)}. */
  @Internal
  public String ofStandard(double lengthMetres) {
    String given = Shown.atMostMetres(lengthMetres);
    return this == METRIC ? given : Shown.feet(lengthMetres) + " (" + given + ")";
  }

  /** A temperature in words: {@code 45 °C}, {@code 113 °F}. */
  public String temperature(double celsius) {
    return this == METRIC
        ? Shown.degrees(celsius) + " °C"
        : Shown.degrees(celsius * 1.8 + 32) + " °F";
  }
}
