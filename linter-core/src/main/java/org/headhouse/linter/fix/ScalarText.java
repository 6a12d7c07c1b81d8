package org.headhouse.linter.fix;

import java.util.regex.Pattern;
import org.headhouse.linter.source.InvisibleCharacters;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.DoubleQuoted;
import org.headhouse.linter.yaml.Yaml11Interpretation;

/** Writes text as a scalar that every reader takes for that text, in block and in flow style. */
final class ScalarText {
  /** Letters, digits and signs that mean nothing to YAML, with single spaces between. */
  private static final Pattern HARMLESS =
      Pattern.compile(
          "[\\p{L}\\p{N}][\\p{L}\\p{M}\\p{N}_.+/()'-]*(?:"
              + " [\\p{L}\\p{N}+(][\\p{L}\\p{M}\\p{N}_.+/()'-]*)*");

  private ScalarText() {}

  /** Plain where that is safe, else in quotes. */
  static String of(String text) {
    boolean plain =
        HARMLESS.matcher(text).matches()
            && text.codePoints().noneMatch(InvisibleCharacters::is)
            && CoreType.of(text) == CoreType.TEXT
            && Yaml11Interpretation.of(text).isEmpty();
    return plain ? text : DoubleQuoted.of(text);
  }

  /**
   * In the style of the old scalar.
   *
   * @param before the old scalar as it is written
   */
  static String like(String before, String text) {
    if (before.startsWith("\"")) {
      return DoubleQuoted.of(text);
    }
    boolean printable = text.codePoints().allMatch(InvisibleCharacters::isWritten);
    return before.startsWith("'") && printable ? "'" + text.replace("'", "''") + "'" : of(text);
  }
}
