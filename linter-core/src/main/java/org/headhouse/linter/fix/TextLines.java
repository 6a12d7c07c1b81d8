package org.headhouse.linter.fix;

import java.util.regex.Pattern;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.jspecify.annotations.Nullable;

/** The line around an index of a text: the rest of it, its indentation, its line break. */
final class TextLines {
  private static final Pattern NOTHING_BUT_A_COMMENT = Pattern.compile("[ \\t]*|[ \\t]+#.*");
  private static final Pattern INDENTATION = Pattern.compile(" *(?:- +)*");

  private final SourceText source;
  private final String text;

  TextLines(SourceText source) {
    this.source = source;
    this.text = source.text();
  }

  int start(Region region) {
    return source.offset(region.startLine(), region.startColumn());
  }

  int end(Region region) {
    return source.offset(region.endLine(), region.endColumn());
  }

  char charAt(int index) {
    return index >= 0 && index < text.length() ? text.charAt(index) : '\n';
  }

  String slice(int from, int to) {
    return text.substring(from, to);
  }

  Region region(int from, int to) {
    Region first = source.at(from);
    Region last = source.at(to);
    return new Region(first.startLine(), first.startColumn(), last.startLine(), last.startColumn());
  }

  int startOfLine(int index) {
    int at = index;
    while (at > 0 && !SourceText.isLineBreak(text.charAt(at - 1))) {
      at--;
    }
    return at;
  }

  int endOfLine(int index) {
    int at = index;
    while (at < text.length() && !SourceText.isLineBreak(text.charAt(at))) {
      at++;
    }
    return at;
  }

  /** The index after the line break at an index; the same where there is none. */
  int afterBreak(int endOfLine) {
    if (text.startsWith("\r\n", endOfLine)) {
      return endOfLine + 2;
    }
    return endOfLine < text.length() ? endOfLine + 1 : endOfLine;
  }

  /** How the line around an index ends; the last line as the first does. */
  String lineBreak(int index) {
    int end = endOfLine(index);
    if (end == text.length()) {
      end = endOfLine(0);
    }
    return end == text.length() ? "\n" : text.substring(end, afterBreak(end));
  }

  /** Whether nothing but a comment follows on the line. */
  boolean endsWithComment(int index) {
    return NOTHING_BUT_A_COMMENT.matcher(text.substring(index, endOfLine(index))).matches();
  }

  /** Spaces up to an index; null where there is anything but dashes and spaces before it. */
  @Nullable String indentation(int index) {
    String before = text.substring(startOfLine(index), index);
    return INDENTATION.matcher(before).matches() ? " ".repeat(before.length()) : null;
  }
}
