package org.headhouse.linter.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

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
    "\u0085",
    "\u2028",
    "\u2029",
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
        "- x\u0085- y\u2028- z\u2029",
        "\uFEFFa: 1\n\uFEFFb: 2",
        "a: \uD83C\uDF31\nb: 2",
        "a: \u0007",
        "a: \uD83C",
        "--- a\n--- b\n... \n--- c",
        "text: |\n  one\n  two\n\nfolded: >-\n  one\n  two\n",
        "\"a\\\n  b\": 'it''s'\n"
      })
  void parserTellsTheSame(String text) {
    assertThat(told(ParserInput.of(text))).isEqualTo(told(new StreamReader(text)));
  }

  @Test
  void parserTellsTheSameOfRandomTexts() {
    Random random = new Random(7);
    for (int run = 0; run < 60_000; run++) {
      StringBuilder text = new StringBuilder();
      for (int piece = random.nextInt(24); piece >= 0; piece--) {
        text.append(PIECES[random.nextInt(PIECES.length)]);
      }
      parserTellsTheSame(text.toString());
    }
  }

  /** All events with their marks, and the fault that ends them; without the text around a mark. */
  private static List<String> told(StreamReader reader) {
    List<String> told = new ArrayList<>();
    try {
      Parser parser = new ParserImpl(reader, new LoaderOptions());
      while (!parser.checkEvent(Event.ID.StreamEnd)) {
        Event event = parser.getEvent();
        told.add(event + at(event.getStartMark()) + at(event.getEndMark()));
      }
    } catch (MarkedYAMLException fault) {
      told.add(fault.getProblem() + at(fault.getProblemMark()));
      told.add(fault.getContext() + at(fault.getContextMark()));
    } catch (YAMLException fault) {
      told.add(fault.getMessage());
    }
    return told;
  }

  private static String at(Mark mark) {
    return mark == null
        ? ""
        : " " + mark.getLine() + ":" + mark.getColumn() + "=" + mark.getIndex();
  }
}
