package org.headhouse.linter.source;

import org.headhouse.linter.stability.Internal;

/** Characters that show nothing, though they tell one text from another. */
@Internal
public final class InvisibleCharacters {
  private static final int REPLACEMENT = 0xFFFD;
  private static final int OPEN_BOX = 0x2423;
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private InvisibleCharacters() {}

  /** Whether a character is a control character, or shows nothing and is no space. */
  public static boolean is(int c) {
    return isBlank(c) || isUnwritten(c);
  }

  /** Whether a character is written with a sign, which a space is as well. */
  public static boolean isWritten(int c) {
    return Character.isDefined(c) && !isUnwritten(c);
  }

  /**
   * A text as a line of a terminal, in which nothing changes what stands around it and nothing is
   * hidden: what shows nothing is U+FFFD, and a space of another kind U+2423. What moves the
   * writing on is a space. Characters that only choose the form of their neighbours stay.
   */
  public static String shown(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.codePoints().forEach(c -> shown.appendCodePoint(shown(c)));
    return shown.toString();
  }

  private static int shown(int c) {
    if (c >= ' ' && c <= '~') {
      return c;
    }
    if (Character.getType(c) == Character.SPACE_SEPARATOR) {
      return OPEN_BOX;
    }
    if (Character.isWhitespace(c)) {
      return ' ';
    }
    return is(c) && !isFormOfNeighbours(c) ? REPLACEMENT : c;
  }

  private static boolean isFormOfNeighbours(int c) {
    return c == ZERO_WIDTH_NON_JOINER || c == ZERO_WIDTH_JOINER || isVariation(c);
  }

  private static boolean isVariation(int c) {
    return (c >= 0xFE00 && c <= 0xFE0F) || (c >= 0xE0100 && c <= 0xE01EF);
  }

  /**
   * Letters and marks that show nothing: the rest of Default_Ignorable_Code_Point of the Unicode
   * Character Database, and the empty Braille pattern.
   */
  private static boolean isBlank(int c) {
    return c == 0x034F
        || c == 0x115F
        || c == 0x1160
        || c == 0x17B4
        || c == 0x17B5
        || (c >= 0x180B && c <= 0x180F)
        || c == 0x2800
        || c == 0x3164
        || isVariation(c)
        || c == 0xFFA0;
  }

  private static boolean isUnwritten(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.SURROGATE ->
          true;
      default -> false;
    };
  }
}
