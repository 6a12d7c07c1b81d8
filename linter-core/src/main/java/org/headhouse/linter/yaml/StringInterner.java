package org.headhouse.linter.yaml;

import org.jspecify.annotations.Nullable;

/**
 * Looks at each text of one file once, and lets equal ones be one object.
 *
 * <p>The same few words make up most of a file. As one object they stay in the processor's nearest
 * cache, where every unit's copies would have to be fetched from behind what the parser leaves.
 */
final class StringInterner {
  private static final int PLACES = 256;
  private static final int LONGEST = 24;

  /** The last text for each place; another that belongs there takes it. */
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

  /** What is known of a text; its own is equal to the given one. */
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

  /** Three letters tell nearly all words of a file apart, without a look at the others. */
  private static int place(String text, int length) {
    int ends = text.charAt(0) * 37 + text.charAt(length - 1) * 17;
    return (ends + text.charAt(length >> 1) * 5 + length) & (PLACES - 1);
  }
}
