package org.headhouse.linter.yaml;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;

/**
 * The characters at which readers of YAML 1.1 end a line, and YAML 1.2, editors and git do not
 * (YAML 1.2.2, 5.4): NEL (U+0085), LS (U+2028) and PS (U+2029).
 *
 * <p>The parser is one of YAML 1.1. What looks like a comment to whoever reviews a change would be
 * a key to it, and every later line would have another number than in git. So the parser gets
 * U+FFFD in their place, which is as wide and ends no line.
 */
final class LineSeparators {
  private static final char NEL = '\u0085';
  private static final char LS = '\u2028';
  private static final char PS = '\u2029';
  private static final char REPLACEMENT = '\uFFFD';

  private LineSeparators() {}

  /** One finding for each of them. */
  static List<Finding> findings(SourceText source) {
    String text = source.text();
    if (!areIn(source)) {
      return List.of();
    }
    List<Finding> findings = new ArrayList<>();
    int line = 1;
    int column = 1;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (is(c)) {
        findings.add(finding(Region.onLine(line, column, 1), c));
      }
      if (source.endsLine(i)) {
        line++;
        column = 1;
      } else if (!Character.isLowSurrogate(c)) {
        column++;
      }
    }
    return findings;
  }

  /** The text with none of them; the same text where it has none. */
  static String hidden(SourceText source) {
    String text = source.text();
    return areIn(source)
        ? text.replace(NEL, REPLACEMENT).replace(LS, REPLACEMENT).replace(PS, REPLACEMENT)
        : text;
  }

  private static boolean areIn(SourceText source) {
    String text = source.text();
    return !source.isAscii()
        && (text.indexOf(NEL) >= 0 || text.indexOf(LS) >= 0 || text.indexOf(PS) >= 0);
  }

  private static boolean is(char c) {
    return c == NEL || c == LS || c == PS;
  }

  private static Finding finding(Region at, char c) {
    return Finding.of(
        "file.line-separator",
        at,
        new Message(
            "the character U+"
                + (c == NEL ? "0085" : c == LS ? "2028" : "2029")
                + " is in this line",
            "some readers of YAML end the line here and others do not, so what looks like a comment"
                + " to one is a key to another",
            "delete it, or replace it with a space or a line break"));
  }
}
