package org.headhouse.linter.rules.name;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.TextReport;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The names that a customer wants; common practice, no source. */
class NamePatternTest {
  private static final String NORTH = Example.with("Seedling North", "Seedling Nord");

  private static List<String> lines(String parameters, String site) throws IOException {
    String policy =
        "format: 1\nrule-set: 1\nrules:\n  name.pattern:\n    parameters:\n" + parameters;
    return SiteLinter.builder()
        .policy(SiteInput.text("linter.yaml", policy))
        .build()
        .checkText("example.yaml", site)
        .results()
        .stream()
        .map(TextReport::inOneLine)
        .toList();
  }

  @Test
  void isSilentWithoutAPattern() throws IOException {
    assertThat(lines("      in-words: anything\n", NORTH)).isEmpty();
    assertThat(lines("      pattern: []\n", NORTH)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '#',
      value = {
        "pattern: '.* (North|Bay)|Propagation' # look for a name that matches"
            + " .* (North|Bay)|Propagation; rename the unit to match",
        "pattern: [Propagation, '.* (North|Bay)'] # look for a name that matches"
            + " Propagation or .* (North|Bay); rename the unit to match"
      })
  void tellsThePattern(String parameter, String contained) throws IOException {
    assertThat(lines("      " + parameter + "\n", Example.SITE)).isEmpty();
    assertThat(lines("      " + parameter + "\n", NORTH))
        .singleElement()
        .asString()
        .startsWith("example.yaml:15:11: warning: the name \"Seedling Nord\" does not match")
        .endsWith(contained + " [name.pattern]");
  }

  @Test
  void tellsTheFirstOfManyPatterns() throws IOException {
    assertThat(lines("      pattern: [A, B, C, D, E]\n", Example.SITE))
        .hasSize(3)
        .allMatch(line -> line.contains("look for a name that matches A or B or C or …;"));
  }

  /** 800 patterns of 25 letters in 20 KB, each of them allowed alone. */
  @ParameterizedTest
  @CsvSource({"800, '([a-z]{1,20}){1,20}'", "3, '([a-z]{1,28}){1,28}'", "20000, a"})
  void ofTooManyPatternsNoneIsUsed(int number, String pattern) throws IOException {
    String list = "'" + pattern + "', ";
    assertThat(lines("      pattern: [" + list.repeat(number) + "]\n", Example.SITE))
        .singleElement()
        .asString()
        .startsWith(
            "linter.yaml:6:16: error: the list of the parameter \"pattern\" is too large: with its "
                + number
                + " values a check would take long")
        .endsWith("[schema.bad-value]");
  }

  @Test
  void tellsTheWordsOfTheCustomer() throws IOException {
    String parameters =
        """
              pattern: '.* (North|Bay)|Propagation'
              in-words: house name, then its bay, like Alder House 3
        """;
    assertThat(
            lines(
                parameters,
                NORTH
                    + "supervision: {link: serial, zones: [Propagation, "
                    + "Seedling Nord, Hardening Bay]}\n"))
        .singleElement()
        .asString()
        .endsWith(
            "people who know the other sites look for house name, then its bay, like Alder House 3;"
                + " rename the unit to match, wherever the file has it [name.pattern]");
  }

  /** It has a mistake of its own, and once that is mended the pattern is asked. */
  @Test
  void aNameThatCannotBeReadIsReportedOnce() throws IOException {
    assertThat(
            lines(
                "      pattern: 'Propagation|S.*|H.*'\n",
                Example.with("Seedling North", "' Seed'")))
        .singleElement()
        .asString()
        .endsWith("[name.unreadable]");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "pattern: '[A-Z' | 6:16 | it is no regular expression (missing closing ]: [A-Z)",
        "pattern: [House, '(North'] | 6:24 | it is no regular expression (missing closing )",
        "pattern: '(?=x)' | 6:16 | correct it; a sign that is meant as such has a \\ before it",
        "pattern: '((a{1000}){1000}){1000}' | 6:16 | it is too large to be matched quickly",
        "pattern: '' | 6:16 | an empty pattern matches no name; write a pattern, or delete it",
        "in-words: '' | 6:17 | it must be a text of at most 200 characters on one line",
        "in-words: \"a\\nb\" | 6:17 | it must be a text of at most 200 characters on one line"
      })
  void aFaultyPatternIsReportedAtItsPlace(String parameter, String place, String contained)
      throws IOException {
    assertThat(lines("      " + parameter + "\n", NORTH))
        .singleElement()
        .asString()
        .startsWith("linter.yaml:" + place + ": error: the parameter ")
        .contains(contained)
        .endsWith("[schema.bad-value]");
  }

  /** What takes ages where one way after the other is tried, on the longest name there is. */
  @Test
  void aHostilePatternEnds() throws IOException {
    String site = Example.with("Seedling North", "a".repeat(200));
    assertThat(lines("      pattern: ['(a+)+b', '(a|aa)+b', '.*(North|Bay|on)']\n", site))
        .singleElement()
        .asString()
        .contains("name.pattern");
  }
}
