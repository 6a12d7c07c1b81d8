package org.headhouse.linter.report;

import java.util.List;

/**
 * How many columns of a terminal a text takes: two for each character that Unicode calls wide or of
 * full width (Standard Annex 11, East Asian Width), none for a mark that is put on the letter
 * before it, and else one.
 */
final class DisplayWidth {
  private static final int FIRST_MARK = 0x300;
  private static final int FIRST_WIDE = 0x1100;

  /** The ranges in which all letters are wide or of full width. */
  private static final List<Range> WIDE =
      List.of(
          new Range(0x1100, 0x115F), // Hangul, leading consonants
          new Range(0x2E80, 0x303E), // radicals, ideographic punctuation
          new Range(0x3041, 0x4DBF), // kana, Bopomofo, compatibility, ideographs
          new Range(0x4E00, 0xA4CF), // ideographs, Yi
          new Range(0xA960, 0xA97C), // Hangul, leading consonants
          new Range(0xAC00, 0xD7A3), // Hangul, syllables
          new Range(0xF900, 0xFAFF), // ideographs
          new Range(0xFE30, 0xFE6F), // forms for vertical text, small forms
          new Range(0xFF01, 0xFF60), // forms of full width
          new Range(0xFFE0, 0xFFE6), // signs of full width
          new Range(0x16FE0, 0x18D08), // Tangut, Khitan
          new Range(0x1AFF0, 0x1B2FB), // kana, Nushu
          new Range(0x1F300, 0x1F64F), // pictures
          new Range(0x1F900, 0x1F9FF), // pictures
          new Range(0x20000, 0x3FFFD)); // ideographs

  /** From the first code point to the last. */
  private record Range(int first, int last) {
    boolean has(int c) {
      return c >= first && c <= last;
    }
  }

  private DisplayWidth() {}

  /** The width of the first code points of a text; of all where it has no more. */
  static int of(String text, int codePoints) {
    return text.codePoints().limit(codePoints).map(DisplayWidth::of).sum();
  }

  static int of(int c) {
    if (c >= FIRST_MARK && isMark(c)) {
      return 0;
    }
    return c >= FIRST_WIDE && WIDE.stream().anyMatch(range -> range.has(c)) ? 2 : 1;
  }

  private static boolean isMark(int c) {
    return switch (Character.getType(c)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> true;
      default -> false;
    };
  }
}
