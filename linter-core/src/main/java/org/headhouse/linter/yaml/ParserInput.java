package org.headhouse.linter.yaml;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import org.headhouse.linter.source.SourceText;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Gives a whole text to the parser, which reads nearly every character several times.
 *
 * <p>The parser's own reader is made for streams: it moves a window and copies each piece into a
 * new text. Here the text is already in memory, so a character is read from an array, and a piece
 * is a part of the text. A test proves that the parser reports the same with either reader.
 *
 * <p>By lines and columns the parser does not count most byte order marks, nor a carriage return
 * that ends the text. The marks that this reader makes count both.
 */
final class ParserInput extends StreamReader {
  /** Stands for what is not ISO 8859-1. */
  private static final char UNKNOWN = '?';

  private static final char NO_CHARACTER = '\0';
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final String text;
  private final char[] characters;
  private final int[] noWindow = {};
  private int index;
  private int line;
  private int startOfLine;
  private int marksInLine;
  private int startOfDocument;
  private Mark mark = new Mark("", -1, 0, 0, noWindow, 0);

  private ParserInput(String text, char[] characters) {
    super("");
    this.text = text;
    this.characters = characters;
  }

  /**
   * The reader for a text. The parser's own reader takes a text with characters beyond the basic
   * plane, or with some that YAML forbids: it reads code points, and reports what is forbidden.
   */
  static StreamReader of(String text) {
    // The bytes that Java holds of most texts, which are copied faster than characters.
    byte[] bytes = text.getBytes(ISO_8859_1);
    if (bytes.length < text.length()) {
      return new WideInput(text); // one byte for two surrogates
    }
    char[] characters = new char[bytes.length];
    for (int i = 0; i < bytes.length; i++) {
      char character = (char) bytes[i];
      if (character < ' ' || character > '~' || character == UNKNOWN) {
        character = text.charAt(i);
        if (!isUsual(character)) {
          return new WideInput(text);
        }
      }
      characters[i] = character;
    }
    return new ParserInput(text, characters);
  }

  private static boolean isUsual(char character) {
    return isPrintable(character) && !Character.isSurrogate(character);
  }

  /** A mark without the text around it, which is needed only for the parser's own messages. */
  @Override
  public Mark getMark() {
    if (mark.getIndex() != index) {
      mark =
          isBehindReturn()
              ? new Mark("", index, line + 1, 0, noWindow, 0)
              : new Mark("", index, line, index - startOfLine, noWindow, 0);
    }
    return mark;
  }

  private boolean isBehindReturn() {
    return index == characters.length && index > 0 && characters[index - 1] == '\r';
  }

  @Override
  public void forward() {
    if (index < characters.length) {
      step();
    }
  }

  @Override
  public void forward(int length) {
    int end = Math.min(index + length, characters.length);
    while (index < end) {
      step();
    }
  }

  private void step() {
    char character = characters[index++];
    if (SourceText.isLineBreak(character)) {
      if (character != '\r' || (index < characters.length && characters[index] != '\n')) {
        line++;
        startOfLine = index;
        marksInLine = 0;
      }
    } else if (character == BYTE_ORDER_MARK) {
      marksInLine++;
    }
  }

  @Override
  public int peek() {
    return index < characters.length ? characters[index] : NO_CHARACTER;
  }

  @Override
  public int peek(int ahead) {
    int at = index + ahead;
    return at < characters.length ? characters[at] : NO_CHARACTER;
  }

  @Override
  public String prefix(int length) {
    return text.substring(index, Math.min(index + length, characters.length));
  }

  /** The next characters; moves behind them. */
  @Override
  public String prefixForward(int length) {
    String prefix = prefix(length);
    index += length;
    return prefix;
  }

  @Override
  public int getIndex() {
    return index;
  }

  @Override
  public int getDocumentIndex() {
    return index - startOfDocument;
  }

  @Override
  public void resetDocumentIndex() {
    startOfDocument = index;
  }

  @Override
  public int getLine() {
    return line;
  }

  @Override
  public int getColumn() {
    return index - startOfLine - marksInLine;
  }
}
