package org.headhouse.linter.yaml;

import org.jspecify.annotations.Nullable;

/**
 * Makes equal texts of one file one object, and determines the type of each only once.
 *
 * <p>The same few words make up most of a file. As one object they stay in the processor's cache;
 * separate copies for every unit would be spread over what the parser leaves in memory.
 */
final class StringInterner {
  private static final int PLACES = 256;
  private static final int LONGEST = 24;

  /** The last text for each place; a new one replaces it. */
  private final @Nullable Word[] known = new @Nullable Word[PLACES];

  /**
   * A text, and what it is where it is written plain.
   *
   * @param differs whether a YAML 1.1 reader reads it differently
   */
  record Word(String text, CoreType type, boolean differs) {
    static Word of(String text) {
      CoreType type = CoreType.of(text);
      return new Word(text, type, Yaml11Interpretation.differs(text, type));
    }
  }

  /** The word for a text. */
  Word of(String text) {
    int length = text.length();
    if (length > LONGEST) {
      return Word.of(text);
    }
    int place = length == 0 ? 0 : place(text, length);
    Word before = known[place];
    if (before != null && before.text.equals(text)) {
      return before;
    }
    Word word = Word.of(text);
    known[place] = word;
    return word;
  }

  /**
   * Three letters and the length are enough to give nearly all words of a file places of their own.
   */
  private static int place(String text, int length) {
    int ends = text.charAt(0) * 37 + text.charAt(length - 1) * 17;
    return (ends + text.charAt(length >> 1) * 5 + length) & (PLACES - 1);
  }
}
