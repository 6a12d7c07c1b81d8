package org.headhouse.linter.draft;

import org.headhouse.linter.source.InvisibleCharacters;
import org.headhouse.linter.stability.Internal;
import org.headhouse.linter.yaml.CoreType;
import org.headhouse.linter.yaml.DoubleQuoted;
import org.headhouse.linter.yaml.Yaml11Interpretation;

/** Writes text so that readers of YAML 1.1 and of YAML 1.2 read just that text, in any place. */
@Internal
public final class YamlScalar {
  /** What may stand in a plain text of ours after its first letter, besides letters and digits. */
  private static final String HARMLESS = " ._-/()+";

  /** So that a reader's quick look is sure to have seen the whole text. */
  private static final int LONGEST_PLAIN = 80;

  private YamlScalar() {}

  /** The text as it is where that is safe, else in double quotes. */
  public static String of(String text) {
    return isPlain(text) ? text : DoubleQuoted.of(text);
  }

  /** Texts that start with a digit or a sign are quoted, whatever readers make of them. */
  private static boolean isPlain(String text) {
    return !text.isEmpty()
        && text.length() <= LONGEST_PLAIN
        && Character.isLetter(text.codePointAt(0))
        && !text.endsWith(" ")
        && text.codePoints().allMatch(YamlScalar::isHarmless)
        && CoreType.of(text) == CoreType.TEXT
        && Yaml11Interpretation.of(text).isEmpty();
  }

  private static boolean isHarmless(int c) {
    return (Character.isLetterOrDigit(c) && !InvisibleCharacters.is(c)) || HARMLESS.indexOf(c) >= 0;
  }
}
