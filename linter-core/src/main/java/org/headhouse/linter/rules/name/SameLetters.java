package org.headhouse.linter.rules.name;

import java.text.Normalizer;

/** Names that are written with the same letters, but not with the same characters. */
public final class SameLetters {
  private static final String HIDDEN =
      "the two look alike, but an accent is a character of its own in one of them";

  private SameLetters() {}

  /**
   * What to write in place of a name that is none, where another is near. A letter and its accent
   * can be one character or two (Unicode Standard Annex 15), which nobody sees.
   */
  public static String remedy(String written, String near) {
    return "write \"" + near + "\"" + (areIn(written, near) ? ", typed anew: " + HIDDEN : "");
  }

  private static boolean areIn(String one, String other) {
    return Normalizer.normalize(one, Normalizer.Form.NFC)
        .equals(Normalizer.normalize(other, Normalizer.Form.NFC));
  }
}
