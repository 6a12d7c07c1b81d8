package org.headhouse.linter.draft;

import org.headhouse.linter.stability.Internal;

/**
 * One cell of a list.
 *
 * @param text without quotes, and without spaces around it; no-break spaces are spaces
 * @param start the index of its first character in the file, a quote included
 * @param end the index after its last character
 */
@Internal
public record Cell(String text, int start, int end) {
  /** For a row that is shorter than the headings, and a list without such a column. */
  public static final Cell NOTHING = new Cell("", 0, 0);

  /** The cell of a stretch of a file. */
  public static Cell of(String content, int start, int end) {
    return new Cell(withPlainSpaces(content).strip(), start, end);
  }

  /** Spreadsheets and mails put no-break spaces where nobody sees them. */
  static String withPlainSpaces(String text) {
    return text.replace('\u00A0', ' ').replace('\u202F', ' ').replace('\u2007', ' ');
  }

  /** Whether a character is a space inside a row. */
  static boolean isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\u00A0' || c == '\u202F' || c == '\u2007';
  }

  public boolean isEmpty() {
    return text.isEmpty();
  }

  /** Whether nothing is said: nothing is written, or a dash. */
  public boolean saysNothing() {
    return text.isEmpty() || text.equals("-") || text.equals("\u2013") || text.equals("\u2014");
  }

  /** The text as messages quote it. */
  public String shown() {
    int most = Math.min(text.length(), 60);
    boolean cutsPair = most < text.length() && Character.isHighSurrogate(text.charAt(most - 1));
    String part = text.substring(0, cutsPair ? most - 1 : most);
    return "\"" + part + (part.length() < text.length() ? "…" : "") + "\"";
  }
}
