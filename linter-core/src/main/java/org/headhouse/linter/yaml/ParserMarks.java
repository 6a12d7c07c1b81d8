package org.headhouse.linter.yaml;

import org.headhouse.linter.source.Region;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.events.Event;

/**
 * Turns the parser's marks, which count from 0, into regions.
 *
 * <p>A mark refers to the parser's buffers, so none is kept.
 */
final class ParserMarks {
  private ParserMarks() {}

  static Region region(Event event) {
    return region(event.getStartMark(), event.getEndMark());
  }

  static Region region(Mark start, Mark end) {
    return new Region(
        start.getLine() + 1, start.getColumn() + 1, end.getLine() + 1, end.getColumn() + 1);
  }

  /** The region of one character at a mark. */
  static Region at(Mark mark) {
    return Region.onLine(mark.getLine() + 1, mark.getColumn() + 1, 1);
  }
}
