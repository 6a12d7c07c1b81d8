package org.headhouse.linter.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.reader.StreamReader;

/** Lines and columns are those of the parser, which follow YAML 1.1, section 5.4. */
class SourceTextTest {

  @ParameterizedTest
  @CsvSource({
    "'', 1",
    "'a', 1",
    "'a\n', 2",
    "'a\r\n', 2",
    "'a\rb', 2",
    "'a\r\r\nb', 3",
    "'a\u0085b\u2028c\u2029d', 1",
    "'a\u000Bb\u000Cc', 1"
  })
  void countsLines(String text, int lines) {
    assertThat(new SourceText("a.yaml", text).at(text.length()).startLine()).isEqualTo(lines);
  }

  @Test
  void agreesWithTheParserAtEveryCharacter() {
    String[] pieces = {"a", "b ", "\n", "\r\n", "\r", "\u00E9", "\uD83C\uDF31"};
    RandomCases.each(
        500,
        random -> {
          StringBuilder text = new StringBuilder();
          random.ints(30, 0, pieces.length).forEach(n -> text.append(pieces[n]));
          assertAgreement(text.toString());
        });
  }

  @ParameterizedTest
  @CsvSource({"0, ''", "1, \uD83C\uDF31", "2, \uD83C\uDF31a", "9, \uD83C\uDF31ab"})
  void cutsLinesByCodePoints(int most, String line) {
    assertThat(new SourceText("a.yaml", "x\n\uD83C\uDF31ab\ny").line(2, most)).isEqualTo(line);
  }

  /** A file may be one line; most of it is then far from the line's start. */
  @ParameterizedTest
  @ValueSource(strings = {"", "\uD83C\uDF31"})
  void findsPlacesFarIntoALine(String wide) {
    String text = "x\n" + wide + "a".repeat(3000) + "b\nc";
    SourceText source = new SourceText("a.yaml", text);
    int place = text.indexOf('b');
    Region region = source.at(place);
    assertThat(region).isEqualTo(Region.onLine(2, 3001 + wide.codePointCount(0, wide.length()), 0));
    assertThat(source.offset(region.startLine(), region.startColumn())).isEqualTo(place);
    assertThat(source.offset(2, 9999)).isEqualTo(text.length());
  }

  /** The same whether a line near the top is far into the text or not, and in whichever order. */
  @ParameterizedTest
  @ValueSource(ints = {1, 4095, 4096, 4097, 400_000})
  void findsLinesBehindALongOne(int length) {
    SourceText source = new SourceText("a.yaml", "a".repeat(length) + "\nbc\nd");
    assertThat(source.line(2, 9)).isEqualTo("bc");
    assertThat(source.has(Region.onLine(2, 1, 2))).isTrue();
    assertThat(source.has(Region.onLine(2, 1, 4))).isFalse();
    assertThat(source.has(Region.onLine(3, 2, 0))).isTrue();
    assertThat(source.has(Region.onLine(4, 1, 0))).isFalse();
  }

  @Test
  void hasNoLineBeforeTheFirst() {
    SourceText source = new SourceText("a.yaml", "a\nb");
    assertThat(source.line(0, 9)).isEmpty();
    assertThat(source.at(2).startLine()).isEqualTo(2);
    assertThat(source.line(0, 9)).isEmpty();
  }

  private static void assertAgreement(String text) {
    SourceText source = new SourceText("a.yaml", text);
    StreamReader parser = new StreamReader(text);
    String[] lines = text.split("\r\n|[\n\r]", -1);
    int offset = 0;
    List<Region> seen = new ArrayList<>();
    while (offset < text.length()) {
      Region at = source.at(offset);
      assertThat(at.startLine()).as(text).isEqualTo(parser.getLine() + 1);
      assertThat(at.startColumn()).as(text).isEqualTo(parser.getColumn() + 1);
      String line = lines[at.startLine() - 1];
      assertThat(source.line(at.startLine(), 100)).as(text).isEqualTo(line);
      assertThat(line).as(text).startsWith(source.line(at.startLine(), 2));
      seen.add(at);
      offset += Character.charCount(text.codePointAt(offset));
      parser.forward();
    }
    assertThat(seen).doesNotHaveDuplicates().isSorted();
    assertThat(source.line(lines.length + 1, 100)).isEmpty();
  }
}
