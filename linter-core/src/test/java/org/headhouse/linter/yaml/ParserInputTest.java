package org.headhouse.linter.yaml;

import org.headhouse.linter.RandomCases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against the parser's own reader. */
class ParserInputTest {
  private static final String[] PIECES = {
    "a",
    "key",
    ": ",
    ":",
    "- ",
    "-",
    "\n",
    "\n  ",
    "\n    ",
    " ",
    "\t",
    "\r",
    "\r\n",
    "'",
    "\"",
    "[",
    "]",
    "{",
    "}",
    ",",
    "#",
    " # x",
    "&a ",
    "*a",
    "!!str ",
    "!x ",
    "|",
    ">",
    "|-\n  ",
    "?",
    "? ",
    "---\n",
    "...\n",
    "%YAML 1.2\n",
    "\\",
    "\\u0041",
    "\u00e4",
    "\uFEFF",
    "\u20AC",
    "120 ohm",
    "<<",
    "~",
    "@",
    "`",
    "1_0",
    "\uD83C\uDF31",
    "\u0007",
    "\uD83C",
  };

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "a",
        "a: b\r\nc: d\r",
        "a: b\rc: d",
        "a: [b, \r\r\r",
        "a: \uD83C\uDF31\r",
        "\uFEFFa: 1\n\uFEFFb: 2",
        "\uFEFFa: {x\uFEFF: 1, y: \uD83C\uDF31}\r\n\uFEFFb: \uFEFF2",
        "a: \uD83C\uDF31\nb: 2",
        "a: \u0007",
        "a: \uD83C",
        "--- a\n--- b\n... \n--- c",
        "text: |\n  one\n  two\n\nfolded: >-\n  one\n  two\n",
        "\"a\\\n  b\": 'it''s'\n"
      })
  void parserTellsTheSame(String text) {
    ParserEvents.assertSameOfEitherReader(text);
  }

  @Test
  void parserTellsTheSameOfRandomTexts() {
    RandomCases.each(
        60_000,
        random -> {
          StringBuilder text = new StringBuilder();
          for (int piece = random.nextInt(24); piece >= 0; piece--) {
            text.append(PIECES[random.nextInt(PIECES.length)]);
          }
          parserTellsTheSame(text.toString());
        });
  }
}
