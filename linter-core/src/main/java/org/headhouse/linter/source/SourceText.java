package org.headhouse.linter.source;

import java.util.Arrays;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The decoded text of one file, with its lines.
 *
 * <p>Lines end as YAML 1.2 ends them: LF, CR LF, or a lone CR. A leading byte order mark is not
 * part of the text.
 */
public final class SourceText {
  private static final int NEAR_THE_TOP = 8;
  private static final int FAR_INTO_A_LINE = 1000;
  private static final int FAR_INTO_THE_TEXT = 4096;

  private final String path;
  private final String text;
  private volatile int @Nullable [] startsOfLines;
  private final boolean ascii;
  private volatile @Nullable Boolean oneUnitEach;

  /**
   * @param path the name of the file in results, with forward slashes
   * @param text the file's characters without a byte order mark
   */
  public SourceText(String path, String text) {
    this(path, text, false);
  }

  SourceText(String path, String text, boolean ascii) {
    this.path = path;
    this.text = text;
    this.ascii = ascii;
  }

  public String path() {
    return path;
  }

  public String text() {
    return text;
  }

  /** Whether the text is known to have no character beyond ASCII. */
  @Internal
  public boolean isAscii() {
    return ascii;
  }

  /** How many lines there are; an empty text has one. */
  public int lines() {
    return startsOfLines().length;
  }

  /**
   * The characters of a line without its end; empty for a line that the text does not have.
   *
   * @param most the greatest number of code points
   */
  public String line(int number, int most) {
    int start = startOfLine(number);
    if (start < 0) {
      return "";
    }
    int end = start;
    for (int i = 0; i < most && end < text.length() && !isLineBreak(text.charAt(end)); i++) {
      end += Character.charCount(text.codePointAt(end));
    }
    return text.substring(start, end);
  }

  /** The index of the UTF-16 unit at a position; the text's length for a position beyond it. */
  public int offset(int line, int column) {
    int start = startOfLine(line);
    if (start < 0) {
      return text.length();
    }
    if (column > FAR_INTO_A_LINE && isOneUnitEach()) {
      return Math.min(text.length() - start, column - 1) + start;
    }
    int offset = start;
    for (int i = 1; i < column && offset < text.length(); i++) {
      offset += Character.charCount(text.codePointAt(offset));
    }
    return offset;
  }

  /**
   * Whether no character needs two UTF-16 units: then a column is an offset, and a long line with
   * many places need not be counted through for each.
   */
  private boolean isOneUnitEach() {
    Boolean known = oneUnitEach;
    if (known == null) {
      known = text.chars().noneMatch(c -> Character.isSurrogate((char) c));
      oneUnitEach = known;
    }
    return known;
  }

  /** The empty region at an index of the text. */
  public Region at(int offset) {
    int found = Arrays.binarySearch(startsOfLines(), offset);
    int line = found >= 0 ? found + 1 : -found - 1;
    int start = startOfLine(line);
    int before = offset - start;
    if (before <= FAR_INTO_A_LINE || !isOneUnitEach()) {
      before = text.codePointCount(start, offset);
    }
    return Region.onLine(line, 1 + before, 0);
  }

  /**
   * Whether the text has both ends of a region. Columns are compared with UTF-16 units, so a column
   * slightly beyond a line with wide characters passes.
   */
  public boolean has(Region region) {
    return has(region.startLine(), region.startColumn())
        && has(region.endLine(), region.endColumn());
  }

  private boolean has(int line, int column) {
    int start = startOfLine(line);
    int next = startOfLine(line + 1);
    int end = next < 0 ? text.length() : next;
    return start >= 0 && column <= end - start + 1;
  }

  private int startOfLine(int number) {
    if (number < 1) {
      return -1;
    }
    if (startsOfLines == null && number <= NEAR_THE_TOP) {
      int start = startNearTheTop(number);
      if (start <= FAR_INTO_THE_TEXT) {
        return start;
      }
    }
    int[] starts = startsOfLines();
    return number <= starts.length ? starts[number - 1] : -1;
  }

  /**
   * Most files are asked only for a line near the top, which has the id; for it no index of all
   * lines is made. Gives up where the search becomes longer than an index is worth.
   */
  private int startNearTheTop(int number) {
    int line = 1;
    int start = 0;
    for (int i = 0; line < number; i++) {
      if (i == text.length()) {
        return -1;
      }
      if (i > FAR_INTO_THE_TEXT) {
        return i;
      }
      if (endsLine(i)) {
        line++;
        start = i + 1;
      }
    }
    return start;
  }

  /** Computed when first needed: a file without results needs none. */
  private int[] startsOfLines() {
    int[] known = startsOfLines;
    if (known == null) {
      known = new int[countLines()];
      int line = 1;
      for (int i = 0; line < known.length; i++) {
        if (endsLine(i)) {
          known[line++] = i + 1;
        }
      }
      startsOfLines = known;
    }
    return known;
  }

  private int countLines() {
    int lines = 1;
    for (int i = 0; i < text.length(); i++) {
      if (endsLine(i)) {
        lines++;
      }
    }
    return lines;
  }

  /** Whether a line ends with the character at an index; CR LF ends it with the LF. */
  public boolean endsLine(int index) {
    char c = text.charAt(index);
    boolean crOfCrLf = c == '\r' && index + 1 < text.length() && text.charAt(index + 1) == '\n';
    return isLineBreak(c) && !crOfCrLf;
  }

  /** Whether a character is a line break or a part of one. */
  public static boolean isLineBreak(char c) {
    return c == '\n' || c == '\r';
  }
}
