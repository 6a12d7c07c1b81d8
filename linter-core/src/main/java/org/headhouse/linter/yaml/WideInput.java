package org.headhouse.linter.yaml;

import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * The parser's own reader with exact marks: its own do not count most byte order marks, nor a
 * carriage return that ends the text.
 */
final class WideInput extends StreamReader {
  private final int[] characters;
  private int looked;
  private int line;
  private int startOfLine;

  WideInput(String text) {
    super(text);
    this.characters = text.codePoints().toArray();
  }

  @Override
  public Mark getMark() {
    Mark mark = super.getMark();
    for (; looked < mark.getIndex(); looked++) {
      if (isEndOfLine(looked)) {
        line++;
        startOfLine = looked + 1;
      }
    }
    return new Mark(
        mark.getName(), looked, line, looked - startOfLine, mark.getBuffer(), mark.getPointer());
  }

  private boolean isEndOfLine(int at) {
    int character = characters[at];
    return character == '\n'
        || (character == '\r' && (at + 1 == characters.length || characters[at + 1] != '\n'));
  }
}
