package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** YAML 1.2.2, section 5.4: none of the three ends a line. */
class LineSeparatorsTest {

  @ParameterizedTest
  @ValueSource(strings = {"\u0085", "\u2028", "\u2029"})
  void nothingIsHiddenInWhatLooksLikeAComment(String separator) {
    String site =
        Example.with("address: 3", "address: 2")
            + "# accepted"
            + separator
            + "suppressions: [{rule: address.duplicate, justification: none}]\n";
    assertThat(Checks.places(site))
        .containsExactly("25:14 address.duplicate", "30:11 file.line-separator");
    assertThat(Checks.of(site).results()).allMatch(result -> result.suppression() == null);
  }

  /** As git and editors count them. */
  @ParameterizedTest
  @ValueSource(strings = {"\u0085", "\u2028", "\u2029"})
  void laterLinesKeepTheirNumbers(String separator) {
    String site =
        Example.with("address: 3", "address: 2")
            .replace("format: 1\n", "format: 1 # " + separator + separator + "\n");
    assertThat(Checks.places(site))
        .containsExactly(
            "1:13 file.line-separator", "1:14 file.line-separator", "25:14 address.duplicate");
  }

  /** In code points, also after a character that is wider than one unit of UTF-16. */
  @Test
  void theirColumnsAreThoseOfCharacters() {
    String wide = "\uD83C\uDFE0";
    assertThat(
            Checks.places(
                Example.SITE + "# " + wide + "\u2028" + wide + wide + "\u0085\r\n#\u2029"))
        .containsExactly(
            "30:4 file.line-separator", "30:7 file.line-separator", "31:2 file.line-separator");
  }

  /** A line of them beside a wide character must not be counted through for each. */
  @Test
  @Timeout(value = 15, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
  void aFileFullOfThemIsReadInOnePass() {
    String full = Example.SITE + "# \uD83C\uDFE0" + "\u0085".repeat(450_000);
    assertThat(Checks.of(full).results()).isNotEmpty();
  }

  @ParameterizedTest
  @CsvSource({"'\u0085', 0085", "'\u2028', 2028", "'\u2029', 2029"})
  void eachIsNamed(String separator, String code) {
    assertThat(Checks.of(Example.SITE + "# " + separator).results())
        .extracting(result -> result.message().fact())
        .isEqualTo(List.of("the character U+" + code + " is in this line"));
  }

  /** As text in quotes they are no other character to YAML 1.2, and still nobody sees them. */
  @Test
  void quotesDoNotHideThem() {
    assertThat(Checks.places(Example.SITE + "title: \"Alder\u2028Brook\"\n"))
        .containsExactly("30:14 file.line-separator");
  }

  @Test
  void anEscapeIsNoSuchCharacter() {
    assertThat(Checks.places(Example.SITE + "title: \"Alder\\u2028Brook\"\n"))
        .doesNotContain("30:14 file.line-separator");
  }
}
