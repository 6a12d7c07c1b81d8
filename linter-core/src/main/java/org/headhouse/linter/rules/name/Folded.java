package org.headhouse.linter.rules.name;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Names as people distinguish them. */
public final class Folded {
  private static final String DOTLESS_I = "\u0131";

  private Folded() {}

  /** The name in the usual width and composition of letters, with single spaces between. */
  static String keepingCase(String name) {
    return isPlain(name) ? name : spaced(Normalizer.normalize(name, Normalizer.Form.NFKC));
  }

  /** Equal for names that differ only in case, spaces, and width or composition of letters. */
  public static String of(String name) {
    return isPlain(name) ? name.toLowerCase(Locale.ROOT) : foldedByUnicode(name);
  }

  /** Most names are words of ASCII with single spaces between: there is only case to fold. */
  private static boolean isPlain(String name) {
    boolean space = true;
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c < ' ' || c > '~' || (c == ' ' && space)) {
        return false;
      }
      space = c == ' ';
    }
    return !space;
  }

  private static String foldedByUnicode(String name) {
    String compatible = Normalizer.normalize(name, Normalizer.Form.NFKC);
    String folded = Normalizer.normalize(foldedCase(compatible), Normalizer.Form.NFKC);
    return spaced(folded);
  }

  private static String spaced(String text) {
    return text.strip().replaceAll("[\\s\\p{Z}]+", " ");
  }

  /**
   * Lower case first, since only the small sharp s has the upper case SS. A dotless i is kept: in
   * upper case it would become the same letter as i.
   */
  private static String foldedCase(String text) {
    return Arrays.stream(text.split(DOTLESS_I, -1))
        .map(part -> part.toLowerCase(Locale.ROOT).toUpperCase(Locale.ROOT))
        .map(part -> part.toLowerCase(Locale.ROOT))
        .collect(Collectors.joining(DOTLESS_I));
  }
}
