package org.headhouse.linter.result;

import java.io.Serializable;
import org.jspecify.annotations.Nullable;

/**
 * That the tool itself met a trouble while it went on, such as a rule that failed; SARIF calls it a
 * tool execution notification.
 *
 * @param file the file at hand, or null
 * @param rule the rule at hand, or null
 */
public record Notification(Level level, String text, @Nullable String file, @Nullable String rule)
    implements Serializable {}
