package org.headhouse.linter.fix;

/**
 * Limits how often a file is checked while it is fixed. Whether fixes work together is known only
 * once they are tried, and a file may have thousands that do not.
 */
final class CheckBudget implements FixLoop.Checker {
  /** What can be checked in a second or two. */
  private static final int MOST_BYTES = 1 << 24;

  /** So that a large file can be fixed as well. */
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
