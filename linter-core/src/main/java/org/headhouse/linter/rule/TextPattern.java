package org.headhouse.linter.rule;

import com.google.re2j.Pattern;
import com.google.re2j.PatternSyntaxException;
import java.text.Normalizer;

/**
 * A regular expression that a policy has. It is matched in a time that grows with the text and the
 * pattern only, so that no policy can make a check hang; look-around and back-references, which
 * need more, are not known.
 */
public final class TextPattern {
  private static final int LONGEST = 500;

  /** Far more than names need, and little enough for a match to be quick. */
  private static final int LARGEST = 1000;

  private final String written;
  private final Pattern pattern;

  private TextPattern(String written, Pattern pattern) {
    this.written = written;
    this.pattern = pattern;
  }

  /** What came of a text. */
  sealed interface Read {}

  /** A pattern. */
  record Good(TextPattern pattern) implements Read {}

  /**
   * No pattern.
   *
   * @param reason a clause
   * @param remedy an imperative clause
   */
  record Bad(String reason, String remedy) implements Read {}

  static Read read(String written) {
    if (written.isEmpty()) {
      return new Bad("an empty pattern matches no name", "write a pattern, or delete it");
    }
    if (written.length() > LONGEST || PatternSize.of(written) > LARGEST) {
      return new Bad(
          "it is too large to be matched quickly",
          "shorten it, write smaller numbers in { }, or divide it into a list of patterns");
    }
    try {
      return new Good(new TextPattern(written, Pattern.compile(composed(written))));
    } catch (PatternSyntaxException wrong) {
      String part = wrong.getPattern();
      return new Bad(
          "it is no regular expression ("
              + wrong.getDescription()
              + (part == null || part.isEmpty() ? "" : ": " + part)
              + ")",
          "correct it; a sign that is meant as such has a \\ before it");
    }
  }

  /** Whether a whole text matches; an accented letter is one letter, however it is composed. */
  public boolean matches(String text) {
    return pattern.matches(composed(text));
  }

  private static String composed(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFC);
  }

  /** The pattern as the policy has it. */
  public String written() {
    return written;
  }

  @Override
  public String toString() {
    return written;
  }
}
