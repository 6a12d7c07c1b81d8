package org.headhouse.linter.result;

import java.io.Serializable;
import java.util.Objects;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * That the tool itself met a trouble while it went on, such as a rule that failed; SARIF calls it a
 * tool execution notification.
 *
 * @param file the file at hand, or null
 * @param rule the rule at hand, or null
 * @param cause what was thrown, or null; two notifications that say the same are equal whatever it
 *     was
 */
public record Notification(
    Level level,
    String text,
    @Nullable String file,
    @Nullable String rule,
    @Nullable Throwable cause)
    implements Serializable {
  @Internal
  public Notification {}

  /** A notification for which nothing was thrown. */
  public Notification(Level level, String text, @Nullable String file, @Nullable String rule) {
    this(level, text, file, rule, null);
  }

  /** The same for another process, which may not know the classes of what was thrown. */
  @Internal
  public Notification withoutCause() {
    return new Notification(level, text, file, rule);
  }

  /** Whether the tool could not do its work, so that no file of the run may pass. */
  public boolean isFailure() {
    return level == Level.ERROR;
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof Notification that
        && level == that.level
        && text.equals(that.text)
        && Objects.equals(file, that.file)
        && Objects.equals(rule, that.rule);
  }

  @Override
  public int hashCode() {
    return Objects.hash(level, text, file, rule);
  }
}
