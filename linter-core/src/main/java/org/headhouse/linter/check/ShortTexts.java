package org.headhouse.linter.check;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.HashMap;
import java.util.Map;
import org.headhouse.linter.source.Sha256;

/**
 * Cuts keys, names and values that are longer than any that the format allows: each of thousands of
 * results has them in its path. What is cut off is in a checksum, so that different texts stay
 * different.
 */
final class ShortTexts {
  private static final int LONGEST = 400;
  private static final int KEPT = 300;
  private static final int DIGITS = 16;

  private final Map<String, String> known = new HashMap<>();

  String of(String text) {
    return text.length() <= LONGEST ? text : known.computeIfAbsent(text, ShortTexts::cut);
  }

  private static String cut(String text) {
    int end = Character.isHighSurrogate(text.charAt(KEPT - 1)) ? KEPT - 1 : KEPT;
    return text.substring(0, end) + "…" + Sha256.hex(text.getBytes(UTF_8)).substring(0, DIGITS);
  }
}
