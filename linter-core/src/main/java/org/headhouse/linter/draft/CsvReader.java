package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.headhouse.linter.source.SourceText;
import org.headhouse.linter.stability.Internal;

/**
 * Reads comma-separated values as RFC 4180 has them. Rows may also end with LF or CR alone, as most
 * programs write them; cells may be separated by semicolons, which spreadsheets write where the
 * comma is the decimal sign, or by tabs, and a first line such as {@code sep=;} may say by what;
 * spaces around cells do not count. Rows without any text are left out.
 *
 * <p>Whatever the text, the rows that could be made out are returned; faults are collected.
 */
@Internal
public final class CsvReader {
  private static final char QUOTE = '"';

  /** Of two that are as frequent, the first one counts. */
  private static final String SEPARATORS = ",;\t";

  /** What spreadsheets write as a first line, also in quotes. */
  private static final Pattern STATED =
      Pattern.compile("(\"?)sep=([,;\t|])\\1[ \t]*(?:\r\n?|\n|$)", Pattern.CASE_INSENSITIVE);

  private final String text;
  private final char separator;
  private final Faults faults;
  private int at;

  private CsvReader(String text, Faults faults) {
    this.text = text;
    this.faults = faults;
    Matcher stated = STATED.matcher(text);
    if (stated.lookingAt()) {
      this.separator = stated.group(2).charAt(0);
      this.at = stated.end();
    } else {
      this.separator = separator(text);
    }
  }

  /**
   * The rows of a list.
   *
   * @param separator between its cells
   */
  public record Table(List<List<Cell>> rows, char separator) {}

  /** The rows that could be made out; what could not is reported. */
  public static Table read(SourceText source, Faults faults) {
    CsvReader reader = new CsvReader(source.text(), faults);
    return new Table(reader.rows(), reader.separator);
  }

  private List<List<Cell>> rows() {
    List<List<Cell>> rows = new ArrayList<>();
    while (at < text.length()) {
      List<Cell> row = row();
      if (row.stream().anyMatch(cell -> !cell.isEmpty())) {
        rows.add(row);
      }
    }
    return rows;
  }

  /** The one that the first line with any has most of, outside of quotes. */
  private static char separator(String text) {
    boolean quoted = false;
    int[] found = new int[SEPARATORS.length()];
    boolean any = false;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == QUOTE;
      if (isEndOfRow(c) && !quoted && any) {
        break;
      }
      int which = quoted ? -1 : SEPARATORS.indexOf(c);
      if (which >= 0) {
        found[which]++;
        any = true;
      }
    }
    int most = 0;
    for (int i = 1; i < found.length; i++) {
      most = found[i] > found[most] ? i : most;
    }
    return SEPARATORS.charAt(most);
  }

  private List<Cell> row() {
    List<Cell> cells = new ArrayList<>();
    cells.add(cell());
    while (at < text.length() && text.charAt(at) == separator) {
      at++;
      cells.add(cell());
    }
    if (at < text.length()) {
      boolean crLf = text.startsWith("\r\n", at);
      at += crLf ? 2 : 1;
    }
    return cells;
  }

  private Cell cell() {
    skipSpaces();
    return at < text.length() && text.charAt(at) == QUOTE ? quoted() : plain();
  }

  private Cell plain() {
    int start = at;
    skipToEndOfCell();
    Cell cell = trimmed(start);
    if (cell.text().indexOf(QUOTE) >= 0) {
      faults.add(
          cell,
          "there is a quote inside the cell " + cell.shown(),
          "there it may start or end anything",
          "put the whole cell into quotes, and write each quote in it twice");
    }
    return cell;
  }

  /** The cell from a place to where the reader is, without the spaces at its end. */
  private Cell trimmed(int start) {
    int end = at;
    while (end > start
        && (Cell.isSpace(text.charAt(end - 1)) || Character.isWhitespace(text.charAt(end - 1)))) {
      end--;
    }
    return Cell.of(text.substring(start, end), start, end);
  }

  /** Quotes around the cell; two of them inside stand for one. */
  private Cell quoted() {
    int start = at;
    StringBuilder content = new StringBuilder();
    int from = start + 1;
    int end = text.indexOf(QUOTE, from);
    while (end >= 0 && text.startsWith("\"\"", end)) {
      content.append(text, from, end + 1);
      from = end + 2;
      end = text.indexOf(QUOTE, from);
    }
    if (end < 0) {
      at = text.length();
      Cell opening = new Cell("", start, start + 1);
      faults.add(
          opening,
          "the quote that starts here is never closed",
          "all that follows would be one cell",
          "close it at the end of its cell");
      return opening;
    }
    at = end + 1;
    Cell cell = Cell.of(content.append(text, from, end).toString(), start, at);
    reportTextAfter(cell);
    return cell;
  }

  private void reportTextAfter(Cell cell) {
    skipSpaces();
    int start = at;
    skipToEndOfCell();
    if (at > start) {
      faults.add(
          trimmed(start),
          "text follows the quotes around the cell " + cell.shown(),
          "nobody can tell whether it belongs to the cell",
          "put the whole cell into quotes, and write each quote in it twice");
    }
  }

  private void skipSpaces() {
    while (at < text.length() && Cell.isSpace(text.charAt(at)) && text.charAt(at) != separator) {
      at++;
    }
  }

  private void skipToEndOfCell() {
    while (at < text.length() && text.charAt(at) != separator && !isEndOfRow(text.charAt(at))) {
      at++;
    }
  }

  private static boolean isEndOfRow(char c) {
    return c == '\n' || c == '\r';
  }
}
