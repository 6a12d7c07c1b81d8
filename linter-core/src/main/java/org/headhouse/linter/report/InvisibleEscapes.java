package org.headhouse.linter.report;

import com.fasterxml.jackson.core.SerializableString;
import com.fasterxml.jackson.core.io.CharacterEscapes;
import com.fasterxml.jackson.core.io.SerializedString;
import java.util.Locale;
import org.headhouse.linter.source.InvisibleCharacters;
import org.jspecify.annotations.Nullable;

/**
 * Escapes in JSON what a reader cannot see, so that no name of a file moves the cursor of a
 * terminal or turns a line around, and a reader that takes U+2028 for the end of a line finds whole
 * ones. A reader of JSON gets the very text.
 */
final class InvisibleEscapes extends CharacterEscapes {
  private static final long serialVersionUID = 1;
  private static final int DELETE = 0x7F;

  private final int[] ascii = standardAsciiEscapesForJSON();

  InvisibleEscapes() {
    ascii[DELETE] = ESCAPE_STANDARD;
  }

  @Override
  public int[] getEscapeCodesForAscii() {
    return ascii.clone();
  }

  /** Halves of surrogate pairs come one by one, and are escaped anyway. */
  @Override
  public @Nullable SerializableString getEscapeSequence(int c) {
    return c > DELETE && !Character.isSurrogate((char) c) && InvisibleCharacters.is(c)
        ? new SerializedString(String.format(Locale.ROOT, "\\u%04X", c))
        : null;
  }
}
