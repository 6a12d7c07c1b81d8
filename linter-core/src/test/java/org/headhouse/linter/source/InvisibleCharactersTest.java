package org.headhouse.linter.source;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The classes of the characters are those of the Unicode Character Database. */
class InvisibleCharactersTest {

  /**
   * A byte order mark, a bell, a turn to the left, the fillers of Hangul, an empty Braille cell.
   */
  @ParameterizedTest
  @ValueSource(ints = {0xFEFF, 0x07, 0x1B, 0x85, 0x202E, 0x2066, 0x200B, 0x3164, 0x034F, 0x2800})
  void whatShowsNothingIsShown(int c) {
    String text = "a" + Character.toString(c) + "b";
    assertThat(InvisibleCharacters.is(c)).isTrue();
    assertThat(InvisibleCharacters.shown(text)).isEqualTo("a\uFFFDb");
  }

  /** A space that no key writes looks like one that is. */
  @ParameterizedTest
  @ValueSource(ints = {0xA0, 0x2003, 0x202F, 0x3000})
  void anotherSpaceIsToldFromTheUsualOne(int c) {
    assertThat(InvisibleCharacters.is(c)).isFalse();
    assertThat(InvisibleCharacters.shown("a" + Character.toString(c) + " b"))
        .isEqualTo("a\u2423 b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\t", "\n", "\r", "\u2028", "\u2029"})
  void theEndOfALineIsASpace(String end) {
    assertThat(InvisibleCharacters.shown("a" + end + "b")).isEqualTo("a b");
  }

  /** Persian joins its letters or not, and a sign of a family is joined from three. */
  @Test
  void whatChoosesAFormStays() {
    String text = "می\u200Cخواهم \uD83D\uDC68\u200D\uD83D\uDC69\u200D\uD83D\uDC67 \u26A0\uFE0F Ö 苗";
    assertThat(InvisibleCharacters.shown(text)).isEqualTo(text);
  }
}
