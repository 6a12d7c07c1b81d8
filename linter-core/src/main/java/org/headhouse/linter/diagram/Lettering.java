package org.headhouse.linter.diagram;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.InvisibleCharacters;

/**
 * Prepares text of a site for a drawing: shows what cannot be seen, estimates widths, and cuts what
 * is too long.
 *
 * <p>The widths are upper bounds over DejaVu Sans, the widest of the usual sans-serif fonts, Noto
 * Sans and Liberation Sans, measured; any other character is taken for 1.1 em.
 */
final class Lettering {
  /** Bold letters are wider by no more than this (measured on the same fonts). */
  static final double BOLD = 1.15;

  private static final String ELLIPSIS = "…";
  private static final int REPLACEMENT = 0xFFFD;
  private static final int MOST_MARKS_ON_A_LETTER = 2;
  private static final int JOINER = 0x200D;
  private static final int NON_JOINER = 0x200C;
  private static final int FIRST_NOT_LATIN = 0x250;
  private static final char ISOLATE = '\u2068';
  private static final char END_OF_ISOLATE = '\u2069';

  private Lettering() {}

  /**
   * The text with everything that cannot be seen shown as U+FFFD. White space becomes a space, and
   * of many marks on one letter two are kept.
   */
  static String visible(String text) {
    StringBuilder clean = new StringBuilder(text.length());
    int marks = 0;
    for (int c : text.codePoints().toArray()) {
      boolean mark = isMark(c);
      marks = mark ? marks + 1 : 0;
      if (marks > MOST_MARKS_ON_A_LETTER) {
        continue;
      }
      if (c == '\n' || c == '\t' || Character.isSpaceChar(c)) {
        clean.append(' ');
      } else {
        clean.appendCodePoint(InvisibleCharacters.visible(c));
      }
    }
    return clean.toString();
  }

  private static boolean isMark(int c) {
    int type = Character.getType(c);
    return type == Character.NON_SPACING_MARK || type == Character.ENCLOSING_MARK;
  }

  /** Whether a text has characters whose width and height depend on the font. */
  static boolean isUncertain(String text) {
    return text.codePoints()
        .anyMatch(c -> c >= FIRST_NOT_LATIN && !isPunctuation(c) && c != REPLACEMENT);
  }

  /** Dashes, quotation marks and the ellipsis. */
  private static boolean isPunctuation(int c) {
    return c >= 0x2010 && c <= 0x2027;
  }

  /** The text isolated from the direction of the text around it (UAX 9). */
  static String isolated(String text) {
    return isUncertain(text) ? ISOLATE + text + END_OF_ISOLATE : text;
  }

  /** The width in ems, at most. */
  static double ems(String text) {
    double sum = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      sum += ems(text.codePointAt(i));
    }
    return sum;
  }

  private static double ems(int c) {
    if (c < 0x7F) {
      return latinEms((char) c);
    }
    if (isMark(c) || c == JOINER || c == NON_JOINER || c == ISOLATE || c == END_OF_ISOLATE) {
      return 0;
    }
    if (c == '·' || c == '°') {
      return 0.5;
    }
    if (c < FIRST_NOT_LATIN && Character.isLowerCase(c)) {
      return c == 'æ' || c == 'œ' ? 1 : 0.65;
    }
    if (c >= 0x590 && c < 0x600) { // Hebrew
      return 0.8;
    }
    return c < FIRST_NOT_LATIN && Character.isUpperCase(c) && c != 'Æ' && c != 'Œ' ? 0.8 : 1.1;
  }

  private static double latinEms(char c) {
    return switch (c) {
      case 'i', 'l', ' ', '.', ',', ':', ';', '\'', 'I', '/', '\\' -> 0.37;
      case 'j', 'f', 'r', 't', '!', '(', ')', '[', ']', '-' -> 0.43;
      case '_', '`', '"', '*', '?', '|', 's', 'c', 'z', 'J' -> 0.56;
      case 'F', 'L', 'E', 'S' -> 0.67;
      case 'm', 'w', 'W', '@', '%' -> 1.02;
      case '+', '<', '=', '>', '~', '#', '^', 'M', '&' -> 0.91;
      default -> Character.isUpperCase(c) ? 0.8 : 0.64;
    };
  }

  /** The text, or as much of its start as fits, with an ellipsis. */
  static String fit(String text, double width, TextStyle style) {
    if (style.widthOf(text) <= width) {
      return text;
    }
    int end = endWithin(text, 0, width - style.widthOf(ELLIPSIS), style);
    return text.substring(0, end).stripTrailing() + ELLIPSIS;
  }

  /** The text on lines that fit, broken at spaces where there are any; the last may be cut. */
  static List<String> wrap(String text, double width, TextStyle style, int mostLines) {
    List<String> lines = new ArrayList<>();
    String rest = text.strip();
    while (lines.size() < mostLines - 1 && style.widthOf(rest) > width) {
      int end = Math.max(endWithin(rest, 0, width, style), firstCharacter(rest));
      int space = end < rest.length() ? rest.lastIndexOf(' ', end) : -1;
      int cut = space > 0 ? space : end;
      lines.add(rest.substring(0, cut).stripTrailing());
      rest = rest.substring(cut).stripLeading();
    }
    if (!rest.isEmpty() || lines.isEmpty()) {
      lines.add(fit(rest, width, style));
    }
    return lines;
  }

  private static int firstCharacter(String text) {
    int end = 0;
    while (end < text.length()
        && (end == 0 || belongsToPrevious(text.codePointBefore(end), text.codePointAt(end)))) {
      end += Character.charCount(text.codePointAt(end));
    }
    return end;
  }

  /** The index up to which a text fits into a width; letters are not parted from their marks. */
  private static int endWithin(String text, int start, double width, TextStyle style) {
    double ems = width / (style.size() * (style.bold() ? BOLD : 1));
    int end = start;
    int at = start;
    double used = 0;
    while (at < text.length() && used <= ems) {
      int c = text.codePointAt(at);
      if (at == start || !belongsToPrevious(text.codePointBefore(at), c)) {
        end = at;
      }
      used += ems(c);
      at += Character.charCount(c);
    }
    return used <= ems ? text.length() : end;
  }

  private static boolean belongsToPrevious(int previous, int c) {
    return isMark(c) || c == JOINER || previous == JOINER;
  }
}
