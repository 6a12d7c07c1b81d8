package org.headhouse.linter.yaml;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;

/**
 * Finds the comments of a first document that was read without a fault.
 *
 * <p>A number sign starts a comment where it follows a space or starts a line, and is in no scalar.
 * A check needs no comments, so the tree has none: they are found in a second pass over the text.
 */
final class Comments {
  private final SourceText source;
  private final String text;
  private final List<Comment> comments = new ArrayList<>();
  private int codePoint;
  private int offset;
  private int counted;
  private int line = 1;
  private int startOfLine;

  private Comments(SourceText source) {
    this.source = source;
    this.text = source.text();
  }

  static List<Comment> of(SourceText source, LoaderOptions options) {
    Comments comments = new Comments(source);
    Parser parser = TokenAhead.parser(ParserInput.of(LineSeparators.hidden(source)), options);
    int from = 0;
    while (!isAtEnd(parser)) {
      if (parser.getEvent() instanceof ScalarEvent scalar) {
        comments.between(from, comments.offsetOf(scalar.getStartMark().getIndex()));
        from = comments.end(scalar);
      }
    }
    comments.between(from, comments.endOfDocument(parser));
    return List.copyOf(comments.comments);
  }

  private static boolean isAtEnd(Parser parser) {
    return parser.checkEvent(Event.ID.DocumentEnd) || parser.checkEvent(Event.ID.StreamEnd);
  }

  /** What follows the first document was not read, and need not be YAML. */
  private int endOfDocument(Parser parser) {
    parser.getEvent();
    return parser.checkEvent(Event.ID.DocumentStart)
        ? offsetOf(parser.peekEvent().getStartMark().getIndex())
        : text.length();
  }

  /** Where a scalar ends; the line of a block scalar's indicator may have a comment of its own. */
  private int end(ScalarEvent scalar) {
    ScalarStyle style = scalar.getScalarStyle();
    if (style == ScalarStyle.LITERAL || style == ScalarStyle.FOLDED) {
      between(offset, endOfLine(offset));
    }
    return offsetOf(scalar.getEndMark().getIndex());
  }

  private void between(int from, int to) {
    int at = text.indexOf('#', from);
    while (at >= 0 && at < to) {
      int end = endOfLine(at);
      if (at == 0 || Character.isWhitespace(text.charAt(at - 1))) {
        comments.add(comment(at, end));
        at = text.indexOf('#', end);
      } else {
        at = text.indexOf('#', at + 1);
      }
    }
  }

  private Comment comment(int from, int to) {
    for (; counted < from; counted++) {
      if (source.endsLine(counted)) {
        line++;
        startOfLine = counted + 1;
      }
    }
    int column = 1 + text.codePointCount(startOfLine, from);
    Region region = Region.onLine(line, column, text.codePointCount(from, to));
    return new Comment(region, text.substring(from + 1, to).strip());
  }

  private int endOfLine(int from) {
    int end = from;
    while (end < text.length() && !SourceText.isLineBreak(text.charAt(end))) {
      end++;
    }
    return end;
  }

  /**
   * The index in UTF-16 units of an index in code points; each call has an index no lower than the
   * last.
   */
  private int offsetOf(int index) {
    offset = text.offsetByCodePoints(offset, index - codePoint);
    codePoint = index;
    return offset;
  }
}
