package org.headhouse.linter.site;

/** The mark of a comment in which a draft asks for something that nobody has looked at yet. */
public final class OpenMark {
  /** What such a comment begins with. */
  public static final String MARK = "look:";

  private OpenMark() {}

  /** Whether the mark follows a number sign in a text, which need not begin a comment. */
  public static boolean isIn(String text) {
    for (int sign = text.indexOf('#'); sign >= 0; sign = text.indexOf('#', sign + 1)) {
      int at = sign + 1;
      while (at < text.length() && Character.isWhitespace(text.charAt(at))) {
        at++;
      }
      if (text.startsWith(MARK, at)) {
        return true;
      }
    }
    return false;
  }
}
