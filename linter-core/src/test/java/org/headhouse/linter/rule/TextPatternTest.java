package org.headhouse.linter.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Regular expressions of a policy, in the syntax that the documentation of RE2 reports. */
class TextPatternTest {

  private static Optional<TextPattern> pattern(String written) {
    return ParameterType.pattern().parse(written);
  }

  private static boolean matches(String written, String text) {
    return pattern(written).orElseThrow().matches(text);
  }

  @ParameterizedTest
  @CsvSource({
    "'[A-Z][a-z]+( [A-Z][a-z]+)* (North|South)', Fern House North, true",
    "'[A-Z][a-z]+( [A-Z][a-z]+)* (North|South)', Fern House Northern, false",
    "'[A-Z][a-z]+', the Fern, false",
    "'(?i)fern [0-9]{1,2}', FERN 12, true",
    "'\\p{Lu}\\p{L}+', Éclat, true",
    "'House|Bay', Bay, true",
    "'[[:upper:]][]x]', A], true",
    "'\\Qa.b\\E', a.b, true"
  })
  void theWholeNameMatches(String written, String name, boolean does) {
    assertThat(matches(written, name)).isEqualTo(does);
  }

  /** Unicode Standard Annex 15: both are the same text. */
  @Test
  void anAccentedLetterIsOneHoweverItIsComposed() {
    assertThat(matches("P.pini.re", "P\u00e9pini\u00e8re")).isTrue();
    assertThat(matches("P.pini.re", "Pe\u0301pinie\u0300re")).isTrue();
    assertThat(matches("P\u00e9p", "Pe\u0301p")).isTrue();
    assertThat(matches("Pe\u0301p", "P\u00e9p")).isTrue();
  }

  /** What takes ages where one way after the other is tried. */
  @ParameterizedTest
  @ValueSource(strings = {"(a+)+b", "(a|a)*b", "(a|aa)+b", "([a-z]+)*[0-9]", "(.*)(.*)(.*)(.*)b"})
  void aPatternThatBranchesIsMatchedAllTheSame(String written) {
    assertThat(matches(written, "a".repeat(200))).isFalse();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "((a{1000}){1000}){1000}",
        "(((((a{9}){9}){9}){9}){9}){9}",
        "[A-Z]{1000}[a-z]{1000}",
        "\\Q[\\E((a{1000}){1000}){1000}]",
        "[]](a{999}){999}",
        "[^]](a{999}){999}",
        "[[:alpha:]](a{999}){999}",
        "[\\]](a{999}){999}",
        "\\p{L}(a{999}){999}",
        "(?:(?:x{0,31}){0,31}){0,31}",
        "(?P<n>a{40,}){40,}"
      })
  void aPatternThatGrowsIsRefusedBeforeItDoes(String written) {
    assertThat(PatternSize.of(written)).isGreaterThan(1000);
    assertThat(pattern(written)).isEmpty();
    assertThat(ParameterType.pattern().whyNot(written)).contains("too large");
  }

  @ParameterizedTest
  @ValueSource(strings = {"((((", "(", "[", "\\", "{", "}", ")", "a{", "a{2", "\\Q", "\\p{", "[[:"})
  void aPatternThatIsCutOffIsRead(String written) {
    assertThat(PatternSize.of(written)).isBetween(0L, 20L);
    if (pattern(written).isEmpty()) {
      assertThat(ParameterType.pattern().whyNot(written)).contains("no regular expression");
    }
  }

  @Test
  void deepNestingIsRefused() {
    assertThat(pattern("(".repeat(100_000) + "a" + ")".repeat(100_000))).isEmpty();
    assertThat(matches("(".repeat(200) + "a" + ")".repeat(200), "a")).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "[A-Z][a-z]{1,20}( [A-Z][a-z]{1,20}){0,5} [0-9]{1,3}",
        "(Alder|Birch|Cedar|Dogwood) House (North|South|East|West) [1-9][0-9]?",
        "\\d{1,3}-\\d{1,3}",
        "[{}]{2}",
        "a{,3}"
      })
  void whatNamesNeedIsTaken(String written) {
    assertThat(pattern(written)).isPresent();
  }

  @ParameterizedTest
  @CsvSource({
    "'[A-Z', 'missing closing ]: [A-Z'",
    "'(North|South', 'missing closing )'",
    "'**', 'missing argument to repetition operator'",
    "'(?=x)', 'invalid or unsupported Perl syntax'",
    "'(a)\\1', 'invalid escape sequence: \\1'",
    "'a{1001}', 'too large'",
    "'', 'matches no name'"
  })
  void whatIsWrongIsReported(String written, String reason) {
    assertThat(pattern(written)).isEmpty();
    assertThat(ParameterType.pattern().whyNot(written)).contains(reason);
    assertThat(ParameterType.pattern().remedy(written)).isPresent();
  }
}
