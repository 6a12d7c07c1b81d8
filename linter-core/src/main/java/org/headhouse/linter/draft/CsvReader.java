package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.SourceText;

/**
 * Reads comma-separated values as RFC 4180 has them. Rows may also end with LF or CR alone, as most
 * programs write them; cells may be separated by semicolons, which spreadsheets write where the
 * comma is the decimal sign; spaces around cells do not count. Rows without any text are left out.
 *
 * <p>Whatever the text, the rows that could be made out are returned; faults are collected.
 */
final class CsvReader {
  private static final char QUOTE = '"';

  private final String text;
  private final char separator;
  private final Faults faults;
  private int at;

  private CsvReader(String text, Faults faults) {
    this.text = text;
    this.separator = separator(text);
    this.faults = faults;
  }

  static List<List<Cell>> rows(SourceText source, Faults faults) {
    CsvReader reader = new CsvReader(source.text(), faults);
    List<List<Cell>> rows = new ArrayList<>();
    while (reader.at < reader.text.length()) {
      List<Cell> row = reader.row();
      if (row.stream().anyMatch(cell -> !cell.isEmpty())) {
        rows.add(row);
      }
    }
    return rows;
  }

  /** The one of the two that the first line with either has more of, outside of quotes. */
  private static char separator(String text) {
    boolean quoted = false;
    int semicolons = 0;
    int commas = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      quoted ^= c == QUOTE;
      if (isEndOfRow(c) && !quoted && semicolons + commas > 0) {
        break;
      }
      semicolons += c == ';' && !quoted ? 1 : 0;
      commas += c == ',' && !quoted ? 1 : 0;
    }
    return semicolons > commas ? ';' : ',';
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
    String content = text.substring(start, at).strip();
    Cell cell = new Cell(content, start, start + content.length());
    if (content.indexOf(QUOTE) >= 0) {
      faults.add(
          cell,
          "a quote stands inside the cell " + cell.shown(),
          "there it may start or end anything",
          "put the whole cell into quotes, and write each quote in it twice");
    }
    return cell;
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
    Cell cell = new Cell(content.append(text, from, end).toString().strip(), start, at);
    tellOfTextBehind(cell);
    return cell;
  }

  private void tellOfTextBehind(Cell cell) {
    skipSpaces();
    int start = at;
    skipToEndOfCell();
    if (at > start) {
      String behind = text.substring(start, at).strip();
      faults.add(
          new Cell(behind, start, start + behind.length()),
          "text follows the quotes around the cell " + cell.shown(),
          "nobody can tell whether it belongs to the cell",
          "put the whole cell into quotes, and write each quote in it twice");
    }
  }

  private void skipSpaces() {
    while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
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
