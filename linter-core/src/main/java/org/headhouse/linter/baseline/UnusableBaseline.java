package org.headhouse.linter.baseline;

import java.io.IOException;
import org.headhouse.linter.source.InvisibleCharacters;

/** That a baseline is not there, or is damaged; the message says where and why. */
public final class UnusableBaseline extends IOException {
  private static final long serialVersionUID = 1;

  private final boolean missing;

  private UnusableBaseline(String message, boolean missing) {
    super(message);
    this.missing = missing;
  }

  /** A baseline that is named and does not exist. */
  public static UnusableBaseline missing(String name) {
    return new UnusableBaseline("the baseline " + name + " does not exist", true);
  }

  /** A fault of a line; what is quoted of it may hold anything, and must not garble a terminal. */
  static UnusableBaseline damaged(String name, int line, String reason) {
    return new UnusableBaseline(
        name + ":" + line + ": " + InvisibleCharacters.shown(reason), false);
  }

  /** Whether it does not exist. */
  public boolean isMissing() {
    return missing;
  }
}
