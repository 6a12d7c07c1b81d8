package org.headhouse.linter.growth;

import java.util.Locale;

/**
 * The work that n, 2n and 4n of something make.
 *
 * @param few n
 */
record Growth(Growing growing, int few, Measured one, Measured two, Measured four) {
  private static final double MEGABYTE = 1e6;

  /**
   * Measures; the first run loads what is loaded once.
   *
   * @param times how many times as many as the build has
   */
  static Growth of(Growing growing, int times) {
    int few = growing.few() * times;
    growing.work(growing.few()).run();
    return new Growth(
        growing,
        few,
        Measured.of(growing.work(few)),
        Measured.of(growing.work(2 * few)),
        Measured.of(growing.work(4 * few)));
  }

  /**
   * How the second step compares with the first, in allocated bytes: 2 where work grows with n, 2.3
   * with n log n for the numbers here, 4 with its square. What is done once cancels out.
   */
  double step() {
    return (double) (four.allocated() - two.allocated())
        / Math.max(1, two.allocated() - one.allocated());
  }

  /** How many times as much four times as many take, in allocated bytes. */
  double ratio() {
    return (double) four.allocated() / one.allocated();
  }

  /** How many bytes are allocated for each byte that comes in. */
  double forAByte() {
    return (double) (four.allocated() - one.allocated()) / (four.bytes() - one.bytes());
  }

  /**
   * A line of the table.
   *
   * @param clean what a byte of a clean site takes
   */
  String row(double clean) {
    return String.format(
        Locale.ROOT,
        "| %s | %d | %d | %.1f | %.1f | %.1f | %.1f |",
        growing.what(),
        few,
        4 * few,
        one.allocated() / MEGABYTE,
        four.allocated() / MEGABYTE,
        ratio(),
        four.allocated() / (clean * four.bytes()));
  }

  /** What identifies the line: all but what differs from run to run. */
  String key() {
    return "| " + growing.what() + " | " + few + " | " + 4 * few + " |";
  }
}
