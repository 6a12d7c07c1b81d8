package org.headhouse.linter.figures;

/** Which units lengths are shown in; everything else of a line is in the same units everywhere. */
public enum Measure {
  METRIC("m", 1),
  US("ft", 0.3048);

  private final String unit;
  private final double metres;

  Measure(String unit, double metres) {
    this.unit = unit;
    this.metres = metres;
  }

  /** The unit of lengths: {@code m} or {@code ft}. */
  public String unit() {
    return unit;
  }

  /** How many of the unit a length is. */
  public double lengthOf(double lengthMetres) {
    return lengthMetres / metres;
  }

  /** A length in words: {@code 42 m}, {@code 137.8 ft}. */
  public String length(double lengthMetres) {
    return this == METRIC ? Shown.metres(lengthMetres) : Shown.feet(lengthMetres);
  }
}
