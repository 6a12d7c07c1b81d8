package org.headhouse.linter.result;

import org.jspecify.annotations.Nullable;

/**
 * That the tool itself met a trouble while it went on, such as a rule that failed; SARIF calls it a
 * tool execution notification.
 *
 * @param file the file at hand, or null
 * @param rule the rule at hand, or null
 */
public record Notification(
    Level level, String text, @Nullable String file, @Nullable String rule) {

  /** Whether the tool could not do its work, so that no file of the run may pass. */
  public boolean isFailure() {
    return level == Level.ERROR;
  }
}
