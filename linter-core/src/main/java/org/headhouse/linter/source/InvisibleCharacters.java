package org.headhouse.linter.source;

import org.headhouse.linter.stability.Internal;

/**
 * Decides which characters a reader cannot see, for everything that shows the text of a file:
 * console, drawings, sheets, JUnit XML, and scalars that are written into a file.
 */
@Internal
public final class InvisibleCharacters {
  private static final int REPLACEMENT = 0xFFFD;
  private static final int OPEN_BOX = 0x2423;
  private static final int ZERO_WIDTH_NON_JOINER = 0x200C;
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  private InvisibleCharacters() {}

  /**
   * Whether a character shows nothing and is no space, or changes the direction of what is around
   * it, or has no agreed sign (private use), or is half of a surrogate pair.
   */
  public static boolean is(int c) {
    return switch (Character.getType(c)) {
      case Character.CONTROL,
          Character.FORMAT,
          Character.LINE_SEPARATOR,
          Character.PARAGRAPH_SEPARATOR,
          Character.PRIVATE_USE,
          Character.SURROGATE ->
          true;
      case Character.UNASSIGNED -> isReservedAsInvisible(c);
      default -> isBlank(c);
    };
  }

  /** Whether a scalar can hold a character as it is, so that whoever reads the file sees it. */
  public static boolean isWritten(int c) {
    return Character.isDefined(c) && !is(c);
  }

  /**
   * The character, or U+FFFD for one that cannot be seen. Joiners and variation selectors stay: the
   * letters next to them take another form.
   */
  public static int visible(int c) {
    return is(c) && !isFormOfNeighbours(c) ? REPLACEMENT : c;
  }

  /**
   * A text as one line in which nothing is hidden: what cannot be seen is U+FFFD, a space of
   * another kind U+2423, and a tab or a line break a space.
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
    return Character.isWhitespace(c) ? ' ' : visible(c);
  }

  private static boolean isFormOfNeighbours(int c) {
    return c == ZERO_WIDTH_NON_JOINER || c == ZERO_WIDTH_JOINER || isVariation(c);
  }

  private static boolean isVariation(int c) {
    return (c >= 0xFE00 && c <= 0xFE0F) || (c >= 0xE0100 && c <= 0xE01EF);
  }

  /**
   * The letters and marks of Default_Ignorable_Code_Point (Unicode Character Database,
   * DerivedCoreProperties), and the empty Braille pattern.
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

  /** The unassigned part of the same property, and the noncharacters. */
  private static boolean isReservedAsInvisible(int c) {
    return c == 0x2065
        || c == 0x180F // assigned in Unicode 14, which Java 17 does not know
        || (c >= 0xFFF0 && c <= 0xFFF8)
        || (c >= 0xE0000 && c <= 0xE0FFF)
        || (c >= 0xFDD0 && c <= 0xFDEF)
        || (c & 0xFFFE) == 0xFFFE;
  }
}
