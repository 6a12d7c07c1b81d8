package org.headhouse.linter.fix;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.source.SourceText;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The place is where the mark stands, which is then taken out of the text. */
class TextLinesTest {
  private static final char MARK = '^';

  private record Marked(TextLines lines, int at) {
    static Marked of(String text) {
      String written = text.replace("\\r", "\r").replace("\\n", "\n").replace('.', ' ');
      int at = written.indexOf(MARK);
      String bare = written.substring(0, at) + written.substring(at + 1);
      return new Marked(new TextLines(new SourceText("a.yaml", bare)), at);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "ab^cd          | 0 | 4 | 4",
        "ab\\ncd^ef\\ng | 3 | 7 | 8",
        "ab\\ncd^\\r\\n | 3 | 5 | 7",
        "ab\\n^\\ng     | 3 | 3 | 4",
        "ab\\r^cd\\rg   | 3 | 5 | 6",
        "ab\\n^         | 3 | 3 | 3",
      })
  void theLineAroundAPlace(String text, int start, int end, int behind) {
    Marked marked = Marked.of(text);
    assertThat(marked.lines.startOfLine(marked.at)).isEqualTo(start);
    assertThat(marked.lines.endOfLine(marked.at)).isEqualTo(end);
    assertThat(marked.lines.afterBreak(end)).isEqualTo(behind);
  }

  /** The last line may lack an end of its own. */
  @ParameterizedTest
  @CsvSource({
    "a^\\nb, \\n",
    "a^\\r\\nb, \\r\\n",
    "a\\r\\nb^, \\r\\n",
    "a\\nb^\\r\\n, \\r\\n",
    "a\\nb^, \\n",
    "a^, \\n",
  })
  void howALineEnds(String text, String lineBreak) {
    Marked marked = Marked.of(text);
    assertThat(marked.lines.lineBreak(marked.at))
        .isEqualTo(lineBreak.replace("\\r", "\r").replace("\\n", "\n"));
  }

  /** Spaces are written as points. */
  @ParameterizedTest
  @CsvSource({
    "'^a', 0",
    "'..^a', 2",
    "'x\\n....^a', 4",
    "'-.^a', 2",
    "'..-.-.^a', 6",
    "'-^a', -1",
    "'a:.^b', -1",
    "'x\\n\t^a', -1",
    "'..-..^a', 5",
  })
  void indentationIsMadeOfSpacesAndDashes(String text, int spaces) {
    Marked marked = Marked.of(text);
    assertThat(marked.lines.indentation(marked.at))
        .isEqualTo(spaces < 0 ? null : " ".repeat(spaces));
  }

  @ParameterizedTest
  @CsvSource({
    "'a^', true",
    "'a^\\nb', true",
    "'a^..\\nb', true",
    "'a^.#.b', true",
    "'a^\t#b', true",
    // Without a space before it the sign belongs to the value.
    "'a^#b', false",
    "'a^.b', false",
    "'a^,', false",
  })
  void whatFollowsOnTheLine(String text, boolean commentAtMost) {
    Marked marked = Marked.of(text);
    assertThat(marked.lines.endsWithComment(marked.at)).isEqualTo(commentAtMost);
  }

  @ParameterizedTest
  @ValueSource(ints = {-1, 3, 4})
  void outsideTheTextALineEnds(int index) {
    TextLines lines = new TextLines(new SourceText("a.yaml", "abc"));
    assertThat(lines.charAt(index)).isEqualTo('\n');
    assertThat(lines.charAt(0)).isEqualTo('a');
    assertThat(lines.charAt(2)).isEqualTo('c');
  }
}
