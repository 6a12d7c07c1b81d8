package org.headhouse.linter.fix;

/**
 * Counts how often a file is checked while it is mended. Whether fixes go well together shows only
 * once they are tried, and a file may have thousands that do not.
 */
final class CheckBudget implements FixLoop.Checker {
  /** What is checked in a second or two, all in all. */
  private static final int MOST_BYTES = 1 << 24;

  /** A large file has its chance as well. */
  private static final int LEAST = 64;

  private final FixLoop.Checker checker;
  private int left;

  CheckBudget(FixLoop.Checker checker, int bytes) {
    this.checker = checker;
    this.left = Math.max(LEAST, MOST_BYTES / Math.max(1, bytes));
  }

  @Override
  public FixLoop.Checked check(byte[] bytes) {
    left--;
    return checker.check(bytes);
  }

  /** Whether there is time to try one fix alone. */
  boolean areLeft() {
    return left > 0;
  }
}
