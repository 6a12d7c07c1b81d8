package org.headhouse.linter.diagnosis;

/** What the last digit of a reading is worth as it was written down: 0.01 for {@code 0.24 V}. */
final class LastDigit {
  private LastDigit() {}

  /** In the unit of the reading. */
  static double of(String written) {
    int point = written.indexOf('.');
    int decimals = 0;
    while (point >= 0
        && point + 1 + decimals < written.length()
        && Character.isDigit(written.charAt(point + 1 + decimals))) {
      decimals++;
    }
    return Math.pow(10, -decimals);
  }
}
