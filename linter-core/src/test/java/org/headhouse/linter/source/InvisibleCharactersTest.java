package org.headhouse.linter.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The classes of the characters are those of the Unicode Character Database. */
class InvisibleCharactersTest {
  /** Default_Ignorable_Code_Point: DerivedCoreProperties of Unicode 14, first and last of each. */
  private static final List<int[]> IGNORABLE =
      List.of(
          new int[] {0x00AD, 0x00AD},
          new int[] {0x034F, 0x034F},
          new int[] {0x061C, 0x061C},
          new int[] {0x115F, 0x1160},
          new int[] {0x17B4, 0x17B5},
          new int[] {0x180B, 0x180F},
          new int[] {0x200B, 0x200F},
          new int[] {0x202A, 0x202E},
          new int[] {0x2060, 0x206F},
          new int[] {0x3164, 0x3164},
          new int[] {0xFE00, 0xFE0F},
          new int[] {0xFEFF, 0xFEFF},
          new int[] {0xFFA0, 0xFFA0},
          new int[] {0xFFF0, 0xFFF8},
          new int[] {0x1BCA0, 0x1BCA3},
          new int[] {0x1D173, 0x1D17A},
          new int[] {0xE0000, 0xE0FFF});

  @Test
  void whatEveryProgramMayLeaveOutIsInvisible() {
    for (int[] range : IGNORABLE) {
      for (int c = range[0]; c <= range[1]; c++) {
        assertThat(InvisibleCharacters.is(c)).as("U+%04X", c).isTrue();
        assertThat(InvisibleCharacters.isWritten(c)).as("U+%04X", c).isFalse();
      }
    }
  }

  /**
   * Controls, a byte order mark, turns of the direction, a soft hyphen, the fillers of Hangul, an
   * empty Braille cell, half a pair, private use, a noncharacter.
   */
  @ParameterizedTest
  @ValueSource(
      ints = {
        0x00, 0x07, 0x1B, 0x7F, 0x85, 0xAD, 0x034F, 0x115F, 0x1160, 0x200B, 0x200E, 0x202E, 0x2060,
        0x2066, 0x2069, 0x2800, 0x3164, 0xD800, 0xDFFF, 0xE000, 0xFDD0, 0xFEFF, 0xFFA0, 0xFFFF,
        0x1D173, 0xE0001, 0x1FFFE
      })
  void whatShowsNothingIsShown(int c) {
    String text = "a" + Character.toString(c) + "b";
    assertThat(InvisibleCharacters.is(c)).isTrue();
    assertThat(InvisibleCharacters.isWritten(c)).isFalse();
    assertThat(InvisibleCharacters.visible(c)).isEqualTo(0xFFFD);
    assertThat(InvisibleCharacters.shown(text)).isEqualTo("a\uFFFDb");
  }

  /** A space that no key writes looks like one that is. */
  @ParameterizedTest
  @ValueSource(ints = {0xA0, 0x2003, 0x202F, 0x3000})
  void anotherSpaceDiffersFromTheUsualOne(int c) {
    assertThat(InvisibleCharacters.is(c)).isFalse();
    assertThat(InvisibleCharacters.shown("a" + Character.toString(c) + " b"))
        .isEqualTo("a\u2423 b");
  }

  @ParameterizedTest
  @ValueSource(strings = {"\t", "\n", "\r", "\u2028", "\u2029"})
  void theEndOfALineIsASpace(String end) {
    assertThat(InvisibleCharacters.shown("a" + end + "b")).isEqualTo("a b");
  }

  /**
   * Latin, Greek, Cyrillic, Armenian, Hebrew with points, Arabic, Devanagari, Tamil, Thai,
   * Georgian, Hangul in syllables and in letters, Ethiopic, Khmer, Mongolian, Han, kana, a letter
   * of plane 1, and emoji. Persian joins its letters or not, and a sign of a family is joined from
   * three.
   */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "Bay 2 (north) ÖØ ñ ﬁ",
        "Θερμοκήπιο",
        "Теплица № 3",
        "Ջերմոց",
        "חֲמָמָה",
        "دفيئة زجاجية",
        "ग्रीनहाउस",
        "பசுமை இல்லம்",
        "เรือนกระจก",
        "სათბური",
        "온실 \u1112\u1161\u11AB",
        "ግሪን ሃውስ",
        "ផ្ទះកញ្ចក់",
        "ᠬᠦᠯᠡᠮᠵᠢ",
        "温室 苗 おんしつ オンシツ",
        "\uD801\uDC00",
        "می\u200Cخواهم \uD83D\uDC68\u200D\uD83D\uDC69\u200D\uD83D\uDC67 \u26A0\uFE0F 苗"
      })
  void lettersOfEveryScriptStay(String text) {
    assertThat(InvisibleCharacters.shown(text)).isEqualTo(text);
    assertThat(text.codePoints().map(InvisibleCharacters::visible).toArray())
        .isEqualTo(text.codePoints().toArray());
  }
}
