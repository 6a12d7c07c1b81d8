package org.headhouse.linter.check;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;

/**
 * Reports that a rule failed.
 *
 * <p>A rule may come from anywhere. Whatever its fault is, even a class that its jar lacks or an
 * endless recursion, the check goes on with the other rules and files. It ends only where the Java
 * machine itself fails, for example without memory.
 */
public final class RuleFailure {
  private static final int LONGEST = 300;

  private RuleFailure() {}

  /**
   * The notification of a failure.
   *
   * @param rule the id of the rule
   * @param file the file at hand
   */
  public static Notification of(String rule, String file, Throwable failure) {
    return new Notification(
        Level.ERROR, "the rule " + rule + " failed: " + said(failure), file, rule, failure);
  }

  /**
   * What a failure says of itself, on one line. A failure of the Java machine is thrown again.
   *
   * @param failure its message may be made by the rule, and fail too
   */
  static String said(Throwable failure) {
    if (failure instanceof VirtualMachineError machine
        && !(failure instanceof StackOverflowError)) {
      throw machine;
    }
    String said;
    try {
      said = failure.toString().replaceAll("\\s+", " ").strip();
    } catch (RuntimeException | StackOverflowError | LinkageError speechless) {
      said = failure.getClass().getName();
    }
    return said.length() > LONGEST ? said.substring(0, LONGEST) + "…" : said;
  }
}
