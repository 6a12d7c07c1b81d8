package org.headhouse.linter.proof;

import java.lang.Character.UnicodeScript;
import java.util.Locale;
import java.util.Set;

/** Decides whether somebody signed: common practice, no source. */
public final class Signature {
  /** What people write where they mean to write something later, without spaces and points. */
  private static final Set<String> STAND_INS =
      Set.of(
          "tbd",
          "tba",
          "tbc",
          "tbs",
          "todo",
          "tobedone",
          "tobeconfirmed",
          "tobedefined",
          "na",
          "notapplicable",
          "notknown",
          "none",
          "nobody",
          "noone",
          "someone",
          "somebody",
          "unknown",
          "unsigned",
          "pending",
          "later",
          "open",
          "missing",
          "initials",
          "name",
          "yourname",
          "placeholder",
          "fixme",
          "dummy",
          "test",
          "null",
          "nil");

  private Signature() {}

  /** Whether a text only holds the place of a signature. */
  public static boolean isStandIn(String by) {
    int[] letters = by.codePoints().filter(Character::isLetter).toArray();
    if (letters.length == 0) {
      return true;
    }
    if (isWholeName(letters[0])) {
      return false;
    }
    String plain = new String(letters, 0, letters.length).toLowerCase(Locale.ROOT);
    return letters.length == 1 || STAND_INS.contains(plain) || isRepeated(plain, by);
  }

  /** A name of one character is usual in Chinese, Japanese and Korean. */
  private static boolean isWholeName(int letter) {
    return Character.isIdeographic(letter) || UnicodeScript.of(letter) == UnicodeScript.HANGUL;
  }

  /** {@code xxx}, {@code aa}; but A.A. are initials. */
  private static boolean isRepeated(String plain, String by) {
    boolean oneLetter = plain.codePoints().distinct().count() == 1;
    return oneLetter && (plain.startsWith("x") || !by.contains("."));
  }
}
