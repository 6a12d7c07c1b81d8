package org.headhouse.linter.line;

/**
 * What a meter may show where nothing is wrong, its own error granted.
 *
 * @param low the least
 * @param high the most; {@link Double#POSITIVE_INFINITY} without a limit
 */
public record ReadingRange(double low, double high) {

  public ReadingRange {
    if (!(low <= high)) {
      throw new IllegalArgumentException("a range needs its least first: " + low + ", " + high);
    }
  }

  /** Whether a reading is within the limits or at one. */
  public boolean contains(double reading) {
    return reading >= low && reading <= high;
  }
}
