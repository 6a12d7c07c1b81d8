package org.headhouse.linter.report;

import static org.headhouse.linter.report.TextReport.printable;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.headhouse.linter.report.StyledLine.Piece;
import org.headhouse.linter.report.StyledLine.Style;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.RelatedLocation;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.Region;

/**
 * Lines of one file with regions marked under them: that of a result with {@code ^}, those that
 * belong to it with {@code -} and what is to be seen there.
 */
final class Excerpt {
  private static final String GAP = "...";

  private final Map<Integer, List<Mark>> marks = new TreeMap<>();

  private record Mark(Location location, Style style, char sign, String label) {
    /** Whether the end of the line was cut off before the region. */
    boolean isCut() {
      return start() > length();
    }

    int start() {
      return location.region().startColumn() - 1;
    }

    int length() {
      return location.line().codePointCount(0, location.line().length());
    }

    /** What precedes the region, as wide as it is shown. */
    String indent() {
      return " ".repeat(width(start()));
    }

    String underline() {
      Region region = location.region();
      int end =
          region.endLine() == region.startLine()
              ? Math.min(region.endColumn() - 1, length())
              : length();
      return String.valueOf(sign).repeat(Math.max(1, width(end) - width(start())));
    }

    private int width(int codePoints) {
      return DisplayWidth.of(printable(location.line()), codePoints);
    }
  }

  /** The line of a place, with the place marked; no lines where its line is not at hand. */
  static List<StyledLine> of(Location location, Style style) {
    Excerpt excerpt = new Excerpt();
    if (!location.line().isBlank()) {
      excerpt.add(new Mark(location, style, '^', ""));
    }
    return excerpt.lines();
  }

  /** The line of a result, and those of its related places that it can show beside it. */
  static List<StyledLine> of(Result result, Style style) {
    Excerpt excerpt = new Excerpt();
    if (!result.location().line().isBlank()) {
      excerpt.add(new Mark(result.location(), style, '^', ""));
      result.related().stream()
          .filter(related -> shows(result, related))
          .forEach(
              related ->
                  excerpt.add(new Mark(related.location(), Style.NOTE, '-', " " + related.text())));
    }
    return excerpt.lines();
  }

  /** Whether the excerpt of a result has one of its related places. */
  static boolean shows(Result result, RelatedLocation related) {
    Location location = related.location();
    return !result.location().line().isBlank()
        && location.file().equals(result.location().file())
        && !location.line().isBlank()
        && !new Mark(location, Style.NOTE, '-', "").isCut();
  }

  private void add(Mark mark) {
    marks
        .computeIfAbsent(mark.location().region().startLine(), line -> new ArrayList<>())
        .add(mark);
  }

  private List<StyledLine> lines() {
    List<StyledLine> lines = new ArrayList<>();
    int width = marks.keySet().stream().mapToInt(line -> digits(line)).max().orElse(0);
    String margin = " ".repeat(2 + width);
    int last = 0;
    for (Map.Entry<Integer, List<Mark>> entry : marks.entrySet()) {
      int number = entry.getKey();
      if (last > 0 && number > last + 1) {
        lines.add(StyledLine.plain(margin + " " + GAP));
      }
      last = number;
      lines.add(
          StyledLine.plain(
              margin.substring(digits(number))
                  + number
                  + " | "
                  + printable(entry.getValue().get(0).location().line())));
      for (Mark mark : entry.getValue()) {
        if (!mark.isCut()) {
          lines.add(
              new StyledLine(
                  List.of(
                      new Piece(Style.PLAIN, margin + " | " + mark.indent()),
                      new Piece(mark.style(), mark.underline() + printable(mark.label())))));
        }
      }
    }
    return lines;
  }

  private static int digits(int number) {
    return String.valueOf(number).length();
  }
}
