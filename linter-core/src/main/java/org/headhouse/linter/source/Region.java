package org.headhouse.linter.source;

import java.io.Serializable;
import java.util.Comparator;
import org.jspecify.annotations.Nullable;

/**
 * A stretch of text, half-open, 1-based, in Unicode code points: the end is the position just after
 * the last character. This is SARIF's region with {@code columnKind: unicodeCodePoints}.
 */
public record Region(int startLine, int startColumn, int endLine, int endColumn)
    implements Place, Comparable<Region>, Serializable {

  /** The first position of a file, for faults that concern the file as a whole. */
  public static final Region START_OF_FILE = new Region(1, 1, 1, 1);

  private static final Comparator<Region> IN_READING_ORDER =
      Comparator.comparingInt(Region::startLine)
          .thenComparingInt(Region::startColumn)
          .thenComparingInt(Region::endLine)
          .thenComparingInt(Region::endColumn);

  public Region {
    if (startLine < 1 || startColumn < 1 || endLine < startLine) {
      throw new IllegalArgumentException(
          "not a region: " + startLine + ":" + startColumn + "-" + endLine + ":" + endColumn);
    }
  }

  /** The region of {@code length} code points that starts at a position and stays on its line. */
  public static Region onLine(int line, int column, int length) {
    return new Region(line, column, line, column + length);
  }

  /** The region of a value that is written out is the value itself. */
  @Override
  public Region region() {
    return this;
  }

  @Override
  public @Nullable Anchored anchored() {
    return null;
  }

  /** Whether every character of the other region lies in this one. */
  public boolean contains(Region other) {
    return !startsAfter(other.startLine, other.startColumn)
        && !endsBefore(other.endLine, other.endColumn);
  }

  private boolean startsAfter(int line, int column) {
    return startLine > line || (startLine == line && startColumn > column);
  }

  private boolean endsBefore(int line, int column) {
    return endLine < line || (endLine == line && endColumn < column);
  }

  @Override
  public int compareTo(Region other) {
    return IN_READING_ORDER.compare(this, other);
  }
}
