package org.headhouse.linter.editor;

import org.eclipse.lsp4j.Position;
import org.eclipse.lsp4j.Range;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;

/**
 * The positions of a text in both forms: ours count lines and code points from 1, the protocol's
 * count lines and UTF-16 units from 0.
 *
 * @param source without a byte order mark
 * @param marks how many UTF-16 units precede it in the first line
 */
record Positions(SourceText source, int marks) {

  /** A region as the protocol has it. */
  Range range(Region region) {
    return new Range(
        position(region.startLine(), region.startColumn()),
        position(region.endLine(), region.endColumn()));
  }

  private Position position(int line, int column) {
    int known = Math.min(line, source.lines());
    int start = source.offset(known, 1);
    int offset = line == known ? Math.min(source.offset(line, column), endOfLine(start)) : start;
    return new Position(known - 1, offset - start + (known == 1 ? marks : 0));
  }

  /** The region between two indices of the text. */
  Range between(int start, int end) {
    Region first = source.at(start);
    Region last = source.at(end);
    return range(
        new Region(first.startLine(), first.startColumn(), last.startLine(), last.startColumn()));
  }

  /** The index in the text; the nearest there is for a position beyond a line or the text. */
  int offset(Position position) {
    int line = Math.max(0, position.getLine());
    if (line >= source.lines()) {
      return source.text().length();
    }
    int start = source.offset(line + 1, 1);
    int units = Math.max(0, position.getCharacter() - (line == 0 ? marks : 0));
    return Math.min(start + Math.min(units, source.text().length()), endOfLine(start));
  }

  /** The empty region at a position. */
  Region region(Position position) {
    return source.at(offset(position));
  }

  int startOfLine(int offset) {
    int start = offset;
    while (start > 0 && !SourceText.isLineBreak(source.text().charAt(start - 1))) {
      start--;
    }
    return start;
  }

  int endOfLine(int offset) {
    int end = offset;
    while (end < source.text().length() && !SourceText.isLineBreak(source.text().charAt(end))) {
      end++;
    }
    return end;
  }
}
