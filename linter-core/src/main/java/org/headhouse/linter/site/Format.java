package org.headhouse.linter.site;

import java.util.Set;

/**
 * Format 1 of the files: the limits that everybody who reads or writes one keeps to. The published
 * schemas state the same ones, and a test compares the two.
 */
public final class Format {
  /** The number of the format. */
  public static final int VERSION = 1;

  /** The characters of a name, a title or another text of one line, in code points. */
  public static final int LONGEST_TEXT = 200;

  /** The characters of an id. */
  public static final int LONGEST_ID = 64;

  /** The items of a chain: more than any line can address. */
  public static final int MOST_ITEMS = 512;

  /** The conductors that are landed at one item. */
  public static final int MOST_CONDUCTORS = 8;

  /** The registers of one request, before it is divided into frames. */
  public static final int MOST_REGISTERS = 1000;

  /** How often one request is repeated. */
  public static final int MOST_RETRIES = 10;

  /** The characters of a name that a display shows. */
  public static final int WIDEST_DISPLAY = 64;

  /** The characters of the mark of a terminal. */
  public static final int LONGEST_TERMINAL_MARK = 32;

  /** The unit loads of one device: those that a whole segment carries (TIA/EIA-485-A). */
  public static final int HEAVIEST_UNIT_LOAD = 32;

  /** The keys of a unit that are its own, and that no default gives. */
  public static final Set<String> KEYS_WITHOUT_DEFAULT =
      Set.of("unit", "role", "address", "serial-number", "termination", "cable-to-next");

  private Format() {}

  /** Whether a text is an id: lower-case words of letters and digits with hyphens between. */
  public static boolean isId(String text) {
    boolean afterHyphen = true;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean isHyphen = c == '-';
      boolean isWord = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
      if (isHyphen ? afterHyphen : !isWord) {
        return false;
      }
      afterHyphen = isHyphen;
    }
    return !afterHyphen && text.length() <= LONGEST_ID;
  }
}
