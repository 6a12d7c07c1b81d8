package org.headhouse.linter.report;

import java.util.List;
import java.util.stream.Collectors;
import org.headhouse.linter.stability.Internal;

/**
 * Lines of tables as RFC 4180 has them: fields in quotes where they need it, lines that end with CR
 * LF. A field that a spreadsheet would run as a formula has an apostrophe in front of it, which
 * shows it as text (OWASP, CSV Injection). The same is done inside a field after a semicolon or a
 * tab, where a spreadsheet of another country begins the next cell.
 */
@Internal
public final class CsvLine {
  /** With the forms of full width, which some spreadsheets take for the same. */
  private static final String SIGNS_OF_FORMULAS = "=+-@\uFF1D\uFF0B\uFF0D\uFF20";

  private static final String ENDS_OF_CELLS = ";\t\r\n";

  private CsvLine() {}

  /** A line with its end. */
  public static String of(List<String> fields) {
    return fields.stream().map(CsvLine::field).collect(Collectors.joining(",", "", "\r\n"));
  }

  private static String field(String text) {
    String safe = withoutFormulas(text);
    boolean plain =
        safe.chars().noneMatch(c -> c == '"' || c == ',' || ENDS_OF_CELLS.indexOf(c) >= 0);
    return plain ? safe : "\"" + safe.replace("\"", "\"\"") + "\"";
  }

  private static String withoutFormulas(String text) {
    StringBuilder safe = new StringBuilder(text.length() + 1);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean starts =
          i == 0
              ? SIGNS_OF_FORMULAS.indexOf(c) >= 0 || Character.isISOControl(c)
              : SIGNS_OF_FORMULAS.indexOf(c) >= 0 && ENDS_OF_CELLS.indexOf(text.charAt(i - 1)) >= 0;
      if (starts) {
        safe.append('\'');
      }
      safe.append(c);
    }
    return safe.toString();
  }
}
