package org.headhouse.linter.diagram;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class LetteringTest {

  /**
   * The width of each character from space to tilde in hundredths of an em, the greatest of DejaVu
   * Sans, Noto Sans and Liberation Sans, measured with the font metrics of Java.
   */
  private static final String REGULAR =
      """
      32 40 46 84 64 95 78 27 39 39 55 84 32 36 32 37 64 64 64 64 64 64 64 64 64 64 34 34 84
      84 84 56 102 68 69 72 77 67 61 78 75 34 50 67 56 91 76 79 67 79 72 67 61 73 68 99 69
      67 69 39 37 39 84 56 50 61 63 55 63 62 35 63 63 28 28 58 28 97 63 61 63 63 41 52 39 63
      59 82 59 59 52 64 55 64 84
      """;

  private static final String BOLD =
      """
      35 46 52 84 70 100 87 31 46 46 55 84 38 42 38 41 70 70 70 70 70 70 70 70 70 70 40 40
      84 84 84 61 100 77 76 73 83 68 68 82 84 39 56 77 64 100 84 85 73 85 77 72 68 81 77 110
      77 72 73 46 41 46 84 56 50 67 72 59 72 68 44 72 71 34 34 67 34 104 71 69 72 72 49 60
      48 71 65 92 65 65 58 71 55 71 84
      """;

  @Test
  void noCharacterIsWiderThanEstimated() {
    List<String> regular = List.of(REGULAR.trim().split("\\s+", -1));
    List<String> bold = List.of(BOLD.trim().split("\\s+", -1));
    assertThat(regular).hasSize('~' - ' ' + 1).hasSameSizeAs(bold);
    for (int i = 0; i < regular.size(); i++) {
      String character = String.valueOf((char) (' ' + i));
      double estimated = Lettering.ems(character) * 100;
      assertThat(estimated).as(character).isGreaterThanOrEqualTo(Integer.parseInt(regular.get(i)));
      assertThat(estimated * Lettering.BOLD)
          .as(character)
          .isGreaterThanOrEqualTo(Integer.parseInt(bold.get(i)));
    }
  }

  /** Measured in DejaVu Sans, in hundredths of an em. */
  @ParameterizedTest
  @CsvSource({"…, 100", "é, 62", "ß, 63", "Ж, 108", "щ, 94", "Ω, 76", "·, 32", "ש, 71"})
  void norAreOthers(String character, double width) {
    assertThat(Lettering.ems(character) * 100).isGreaterThanOrEqualTo(width);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'a\u202Eb' | a\uFFFDb",
        "'a\u2069b\u2066' | a\uFFFDb\uFFFD",
        "'a\u0007b' | a\uFFFDb",
        "'a\u00A0b' | a b",
        "'e\u0301\u0302\u0303\u0304f' | e\u0301\u0302f",
        "'\uD83D\uDC69\u200D\uD83C\uDF3E' | \uD83D\uDC69\u200D\uD83C\uDF3E"
      })
  void whatIsHiddenIsSeen(String text, String visible) {
    assertThat(Lettering.visible(text)).isEqualTo(visible);
  }

  static Stream<String> names() {
    return Stream.concat(
        RandomSite.HOSTILE_NAMES.stream(), Stream.of("Bay 2", "Hanging Baskets", "a", ""));
  }

  @ParameterizedTest
  @MethodSource("names")
  void aCutTextFits(String name) {
    String text = Lettering.visible(name);
    for (int step = 0; step < 53; step++) {
      double width = 30 + 7 * step;
      String cut = Lettering.fit(text, width, TextStyle.NAME);
      assertThat(TextStyle.NAME.widthOf(cut)).isLessThanOrEqualTo(width + 1e-9);
      assertThat(cut.equals(text) || cut.endsWith("…")).isTrue();
      List<String> lines = Lettering.wrap(text, width, TextStyle.NAME, 3);
      assertThat(lines).hasSizeLessThanOrEqualTo(3).isNotEmpty();
      assertThat(lines)
          .allSatisfy(
              line -> assertThat(TextStyle.NAME.widthOf(line)).isLessThanOrEqualTo(width + 1e-9));
    }
  }

  @Test
  void linesBreakAtSpacesAndKeepAllWords() {
    double width = TextStyle.NORMAL.widthOf("alpha beta");
    assertThat(Lettering.wrap("alpha beta gamma", width, TextStyle.NORMAL, 9))
        .containsExactly("alpha beta", "gamma");
    assertThat(Lettering.wrap("alphabetagamma", width, TextStyle.NORMAL, 9))
        .hasSize(2)
        .satisfies(lines -> assertThat(String.join("", lines)).isEqualTo("alphabetagamma"));
  }

  /** Half a letter would be another letter, or none. */
  @Test
  void nothingIsCutWithinALetter() {
    String farmer = "\uD83D\uDC69\u200D\uD83C\uDF3E";
    String text = farmer.repeat(20);
    for (double width = 20; width < 200; width++) {
      String cut = Lettering.fit(text, width, TextStyle.NAME).replace("…", "");
      assertThat(cut.length() % farmer.length()).isZero();
    }
  }

  @Test
  void boldIsWider() {
    assertThat(TextStyle.STRONG.widthOf("a"))
        .isCloseTo(TextStyle.NORMAL.widthOf("a") * Lettering.BOLD, within(1e-9));
  }

  /** Kept apart by the isolates of UAX 9, where it can matter. */
  @Test
  void foreignLettersAreIsolated() {
    assertThat(Lettering.isolated("חממה")).isEqualTo("\u2068חממה\u2069");
    assertThat(Lettering.isolated("Bay – 2…")).isEqualTo("Bay – 2…");
  }
}
