package org.headhouse.linter.check;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;

/**
 * Tells that a rule failed.
 *
 * <p>A rule may come from anywhere. Whatever its fault is, also a class that its jar lacks or an
 * endless recursion, the other rules and files go on.
 */
public final class RuleFailure {
  private RuleFailure() {}

  /**
   * The notification of a failure.
   *
   * @param rule the id of the rule
   * @param file the file at hand
   */
  public static Notification of(String rule, String file, Throwable failure) {
    return new Notification(Level.ERROR, "the rule " + rule + " failed: " + failure, file, rule);
  }
}
