package org.headhouse.linter.fix;

/**
 * Limits how often a file is checked while it is fixed. Whether fixes work together is known only
 * once they are tried, and a file may have thousands that do not.
 */
final class CheckBudget implements FixLoop.Checker {
  /** What can be checked in about a second, in bytes of a file without results. */
  private static final int MOST_BYTES = 1 << 24;

  /** A result takes as long to find and to explain as so many bytes to read. */
  private static final int BYTES_OF_RESULT = 800;

  /** So that a large file can be fixed as well. */
  private static final int LEAST = 16;

  private final FixLoop.Checker checker;
  private boolean isFirst = true;
  private int left;

  CheckBudget(FixLoop.Checker checker) {
    this.checker = checker;
  }

  @Override
  public FixLoop.Checked check(byte[] bytes) {
    FixLoop.Checked checked = checker.check(bytes);
    if (isFirst) {
      isFirst = false;
      long each = 1L + bytes.length + (long) BYTES_OF_RESULT * checked.results().size();
      left = Math.max(LEAST, (int) (MOST_BYTES / each));
    }
    left--;
    return checked;
  }

  /** Whether there is time to try one fix alone. */
  boolean areLeft() {
    return left > 0;
  }
}
