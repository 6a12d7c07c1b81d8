package org.headhouse.linter.site;

import java.time.LocalDate;
import java.util.List;
import java.util.regex.Pattern;

/**
 * The mark of a comment about an open point: a draft asks for something that nobody has looked at
 * yet, or a visit did not see what it should have seen.
 */
public final class OpenMark {
  /** What such a comment begins with. */
  public static final String MARK = "look:";

  private static final Pattern NOT_SEEN =
      Pattern.compile(": not seen on [0-9]{4}-[0-9]{2}-[0-9]{2} by ");

  private OpenMark() {}

  /**
   * What a visit did not see, as the text of a comment.
   *
   * @param what that was to be seen, and where
   * @param remark empty for none
   */
  public static String notSeen(String what, LocalDate day, String by, String remark) {
    String end = remark.isEmpty() ? "" : "; " + remark;
    return MARK + " " + what + ": not seen on " + day + " by " + by + end;
  }

  /** What visits did not see, as the comments in a text say, each without its mark. */
  public static List<String> notSeenIn(String text) {
    return text.lines()
        .filter(line -> isNotSeen(line) && isIn(line))
        .map(line -> line.substring(line.indexOf(MARK) + MARK.length()).strip())
        .toList();
  }

  /** Whether a visit left a point open, and not a draft. */
  public static boolean isNotSeen(String comment) {
    return NOT_SEEN.matcher(comment).find();
  }

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
