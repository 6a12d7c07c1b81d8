package org.headhouse.linter.fault;

/**
 * All values from a least to a most.
 *
 * @param low may be minus infinity
 * @param high may be infinity
 */
public record Span(double low, double high) {
  /** Nothing is known. */
  public static final Span ANY = new Span(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);

  static final Span ZERO = new Span(0, 0);

  public Span {
    if (!(low <= high)) {
      throw new IllegalArgumentException("a span needs its least first: " + low + ", " + high);
    }
  }

  /** What a resistor of some ohms conducts, which may be off by a share. */
  static Span siemens(double leastOhms, double mostOhms, double share) {
    return new Span(1 / (mostOhms * (1 + share)), 1 / (leastOhms * (1 - share)));
  }

  /** Around a value, off by a share at most. */
  static Span around(double value, double share) {
    return new Span(value * (1 - share), value * (1 + share));
  }

  /** From nothing to the most of this. */
  Span fromZero() {
    return new Span(0, high);
  }

  Span plus(Span other) {
    return new Span(low + other.low, high + other.high);
  }

  /** The same, wider by something on both sides. */
  Span widened(double by) {
    return new Span(low - by, high + by);
  }

  /** The product with a span that is not negative. */
  Span times(Span positive) {
    return new Span(
        Math.min(low * positive.low, low * positive.high),
        Math.max(high * positive.low, high * positive.high));
  }

  Span negated() {
    return new Span(-high, -low);
  }

  /** Whether some value is in both. */
  public boolean meets(Span other) {
    return low <= other.high && other.low <= high;
  }
}
