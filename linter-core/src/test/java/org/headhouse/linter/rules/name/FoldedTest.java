package org.headhouse.linter.rules.name;

import static org.assertj.core.api.Assertions.assertThat;

import com.ibm.icu.text.Normalizer2;
import java.util.Locale;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Names are compared after NFKC (UAX 15), case folding (Unicode, 3.13) and folding of spaces. */
class FoldedTest {

  @ParameterizedTest
  @CsvSource({
    "Zone 1, ZONE 1, true",
    "Zone 1, \uFF3A\uFF4F\uFF4E\uFF45 \uFF11, true", // full width
    "Stra\u00DFe, STRASSE, true", // sharp s folds to ss
    "Stra\u1E9Ee, strasse, true", // capital sharp s
    "Bay 2, Bay\u00A02, true", // non-breaking space
    "Bay 2, Bay\u20072, true", // figure space
    "Bay 2, Bay\u30002, true", // ideographic space
    "Bay 2, Bay   2, true",
    "Bay 2, Bay\t2, true",
    "Bay 2, 'Bay 2 ', true",
    "Bay 2, ' Bay 2', true",
    "Bay~2, bay~2, true",
    "P\u00E9pini\u00E8re, Pe\u0301pinie\u0300re, true", // composed and decomposed
    "\uFB01eld, field, true", // ligature
    "\u03A3\u03AF\u03C3\u03C5\u03C6\u03BF\u03C2, \u03A3\u038A\u03A3\u03A5\u03A6\u039F\u03A3, true", // final sigma
    "Bay I, bay i, true",
    "Bay \u00B2, Bay 2, true", // superscript two
    "\u0130zmir, izmir, false", // folds to i and a dot above, in every locale
    "Bay 1, Bay 2, false",
    "Bay 12, Bay 1 2, false",
    "Orangerie, Orang\u00E9rie, false"
  })
  void namesThatArePeoplesSame(String one, String other, boolean same) {
    assertThat(Folded.of(one).equals(Folded.of(other))).isEqualTo(same);
  }

  /**
   * NFKC_Casefold of the Unicode data, as ICU has it, never reports apart what we take for equal.
   */
  @Test
  void foldsAllThatUnicodeFolds() {
    Normalizer2 reference = Normalizer2.getNFKCCasefoldInstance();
    int folding = 0;
    for (int c = 0; c <= Character.MAX_CODE_POINT; c++) {
      String letter = Character.toString(c);
      if (!Character.isLetterOrDigit(c)) {
        continue;
      }
      String folded = reference.normalize(letter);
      if (folded.isEmpty() || !folded.codePoints().allMatch(Character::isDefined)) {
        continue; // invisible, or newer than the Unicode version of this Java
      }
      assertThat(Folded.of(letter)).as("U+%04X", c).isEqualTo(Folded.of(folded));
      folding += folded.equals(letter) ? 0 : 1;
    }
    assertThat(folding).isGreaterThan(1_400);
  }

  @ParameterizedTest
  @ValueSource(strings = {"tr", "az", "lt", "de", "en"})
  void theLocaleOfTheMachineDoesNotMatter(String language) {
    Locale before = Locale.getDefault();
    Locale.setDefault(Locale.forLanguageTag(language));
    try {
      assertThat(Folded.of("BAY I")).isEqualTo("bay i");
      assertThat(Folded.of("\u0130zmir")).isEqualTo("i\u0307zmir");
      String text = Example.with("Seedling North", "FIELD I").replace("Hardening Bay", "field i");
      assertThat(Checks.places(text)).containsExactly("23:11 name.duplicate");
    } finally {
      Locale.setDefault(before);
    }
  }
}
