package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
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

  @Test
  void eachIsNamed() {
    assertThat(Checks.of(Example.SITE + "# \u2028").results())
        .extracting(result -> result.message().fact())
        .isEqualTo(List.of("the character U+2028 is in this line"));
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
