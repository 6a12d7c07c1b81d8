package org.headhouse.linter.fix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.headhouse.linter.yaml.DoubleQuoted;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * What is written is read back by a reader of YAML 1.1, SnakeYAML, alone, in a list and in a map.
 */
class ScalarTextTest {

  private static Object read(String yaml) {
    return new Yaml(new SafeConstructor(new LoaderOptions())).load(yaml);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "Palms",
        "Bay 3",
        "",
        " ",
        "a ",
        " a",
        "a  b",
        "yes",
        "No",
        "~",
        "null",
        "12",
        "0x1F",
        "1_000",
        "12:30",
        "1e3",
        ".5",
        "2026-03-14",
        "a: b",
        "a #b",
        "#a",
        "- a",
        "-",
        "-a",
        "? a",
        "[a]",
        "{a}",
        "a, b",
        "a]",
        "*a",
        "&a",
        "!a",
        "|",
        ">",
        "%a",
        "@a",
        "`a",
        "it's",
        "say \"so\"",
        "back\\slash",
        "tab\there",
        "two\nlines",
        "no\u00a0break",
        "bell\u0007",
        "zero\u200bwidth",
        "a\u3164b",
        "soft\u00adhyphen",
        "\u2028",
        "Élevage",
        "温室",
        "\uD83C\uDF34",
        "\uDB40\uDC01",
        "true",
        "off",
        "=",
        "<<",
        "120 ohm",
        "120 ohm + 1 nF",
        "1/8",
        "a/b",
        "(a)",
        "a.",
        "R.O.",
        "B-2",
        "B_2",
        "+5",
        "10.0.0.1/24",
        "...",
        "---"
      })
  void isReadBack(String text) {
    for (String written :
        List.of(
            ScalarText.of(text),
            DoubleQuoted.of(text),
            ScalarText.like("'old'", text),
            ScalarText.like("\"old\"", text),
            ScalarText.like("old", text))) {
      assertThat(read(written)).isEqualTo(text);
      assertThat(read("[" + written + ", " + written + "]")).isEqualTo(List.of(text, text));
      assertThat(read("a: " + written + "\n")).isEqualTo(Map.of("a", text));
      assertThat(written.codePoints())
          .noneMatch(c -> c < ' ' || List.of(0xAD, 0x200B, 0x2028, 0x3164).contains(c));
    }
  }

  /** No more quotes than are needed, and those that were there. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "old   | Bay 3      | Bay 3",
        "old   | 120 ohm    | 120 ohm",
        "old   | R.O. (new) | R.O. (new)",
        "old   | yes        | \"yes\"",
        "old   | 12         | \"12\"",
        "old   | a: b       | \"a: b\"",
        "'old' | Bay 3      | 'Bay 3'",
        "'old' | it's       | 'it''s'",
        "'old' | a\u200bb   | \"a\\u200Bb\"",
        "\"o\" | Bay 3      | \"Bay 3\"",
        "\"o\" | it's       | \"it's\"",
        "old   | \uDB40\uDC01a | \"\\U000E0001a\"",
        "old   | a\\b       | \"a\\\\b\"",
        "old   | a\"b       | \"a\\\"b\"",
        "old   | \uE000a    | \"\\uE000a\"",
        "old   | \u0378a    | \"\\u0378a\"",
        "old   | \uFFFFa    | \"\\uFFFFa\"",
      })
  void inTheStyleOfWhatWasThere(String before, String text, String written) {
    assertThat(ScalarText.like(before, text)).isEqualTo(written);
  }
}
