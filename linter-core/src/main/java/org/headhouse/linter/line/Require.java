package org.headhouse.linter.line;

/** What the records of this package demand of their numbers. */
final class Require {
  private Require() {}

  static void positive(double value, String name) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be positive and finite: " + value);
    }
  }

  static void notNegative(double value, String name) {
    if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be finite and not negative: " + value);
    }
  }

  /** A deviation as a share; from 1 on nothing would be left. */
  static void share(double value, String name) {
    if (!(value >= 0 && value < 1)) {
      throw new IllegalArgumentException(name + " must be 0 or more and less than 1: " + value);
    }
  }
}
