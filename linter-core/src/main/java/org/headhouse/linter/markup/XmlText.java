package org.headhouse.linter.markup;

/** Text that XML 1.0 can hold: characters outside its production Char become U+FFFD. */
public final class XmlText {
  private static final int REPLACEMENT = 0xFFFD;

  private XmlText() {}

  /** The text with every character that XML 1.0 cannot hold replaced. */
  public static String of(String text) {
    if (isPlain(text)) {
      return text;
    }
    StringBuilder safe = new StringBuilder(text.length());
    text.codePoints().forEach(c -> safe.appendCodePoint(isAllowed(c) ? c : REPLACEMENT));
    return safe.toString();
  }

  /** Nearly all text is, and need not be copied. */
  private static boolean isPlain(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c < ' ' || c >= Character.MIN_SURROGATE) {
        return false;
      }
    }
    return true;
  }

  private static boolean isAllowed(int c) {
    return c == '\t'
        || c == '\n'
        || c == '\r'
        || (c >= 0x20 && c <= 0xD7FF)
        || (c >= 0xE000 && c <= 0xFFFD)
        || c >= 0x10000;
  }
}
