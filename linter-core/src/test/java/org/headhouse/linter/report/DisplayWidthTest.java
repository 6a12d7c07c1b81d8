package org.headhouse.linter.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.lang.UCharacter;
import com.ibm.icu.lang.UProperty;
import java.util.List;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the International Components for Unicode, which have the property East_Asian_Width. */
class DisplayWidthTest {

  private static int expected(int c) {
    return switch (Character.getType(c)) {
      case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> 0;
      default ->
          switch (UCharacter.getIntPropertyValue(c, UProperty.EAST_ASIAN_WIDTH)) {
            case UCharacter.EastAsianWidth.WIDE, UCharacter.EastAsianWidth.FULLWIDTH -> 2;
            default -> 1;
          };
    };
  }

  /** Names are made of letters; of pictures and signs only the usual ones are known. */
  @Test
  void everyLetterAndMarkHasTheWidthThatUnicodeGives() {
    int wide = 0;
    for (int c = ' '; c <= Character.MAX_CODE_POINT; c++) {
      if (Character.isLetterOrDigit(c) || (expected(c) == 0 && Character.isDefined(c))) {
        assertThat(DisplayWidth.of(c)).as("U+%04X", c).isEqualTo(c == 0xAD ? 1 : expected(c));
        wide += expected(c) / 2;
      }
    }
    assertThat(wide).isGreaterThan(90_000);
  }

  /** Ideographs, kana of full and half width, a letter with a mark of its own, a picture. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u5317\u6E29\u5BA4",
        "\u30CF\u30A6\u30B9",
        "\uFF8A\uFF73\uFF7D",
        "Serre e\u0301",
        "\uD83C\uDF31"
      })
  void theMarkIsUnderWhatItMeans(String name) {
    Result result =
        Checks.of(
                Example.with(
                    "{at: Propagation, readings: [light,",
                    "{at: \"" + name + "\", readings: [lightt,"))
            .results()
            .stream()
            .filter(one -> one.rule().startsWith("schema."))
            .findFirst()
            .orElseThrow();
    List<String> lines = TextReport.lines(result);
    String shown = lines.get(1);
    int column =
        shown
            .codePoints()
            .limit(shown.codePointCount(0, shown.indexOf("lightt")))
            .map(DisplayWidthTest::expected)
            .sum();
    assertThat(shown).contains(name);
    assertThat(lines.get(2).indexOf('^')).isEqualTo(column);
    assertThat(lines.get(2)).endsWith(" ^^^^^^");
  }
}
