package org.headhouse.linter.yaml;

import java.util.Locale;
import org.headhouse.linter.source.InvisibleCharacters;

/** Writes text as a double-quoted scalar, which every reader of YAML takes for just that text. */
public final class DoubleQuoted {
  private DoubleQuoted() {}

  /** The text in double quotes; what cannot be seen is written as an escape. */
  public static String of(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints().forEach(c -> append(quoted, c));
    return quoted.append('"').toString();
  }

  private static void append(StringBuilder quoted, int c) {
    if (c == '"' || c == '\\') {
      quoted.append('\\').appendCodePoint(c);
    } else if (isSeen(c)) {
      quoted.appendCodePoint(c);
    } else {
      quoted.append(String.format(Locale.ROOT, c > 0xFFFF ? "\\U%08X" : "\\u%04X", c));
    }
  }

  /** Other spaces look like the usual one, so they are escaped too. */
  private static boolean isSeen(int c) {
    return c == ' '
        || (InvisibleCharacters.isWritten(c) && Character.getType(c) != Character.SPACE_SEPARATOR);
  }
}
