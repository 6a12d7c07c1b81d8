package org.headhouse.linter.check;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;

/**
 * Tells that a rule failed.
 *
 * <p>A rule may come from anywhere. Whatever its fault is, also a class that its jar lacks or an
 * endless recursion, the other rules and files go on. Only where the machine itself fails, as for
 * want of memory, does nothing go on.
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
        Level.ERROR, "the rule " + rule + " failed: " + said(failure), file, rule);
  }

  /**
   * What a failure says of itself, on one line. One of the machine is thrown on.
   *
   * @param failure its own words may come from anywhere, and fail too
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
