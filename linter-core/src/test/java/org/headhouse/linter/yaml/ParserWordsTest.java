package org.headhouse.linter.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.Region;
import org.headhouse.linter.source.SourceText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A slip is told in plain words where it was made, and is gone once the remedy is followed. */
class ParserWordsTest {

  private static List<Finding> findings(String text) {
    return new YamlReader(Limits.DEFAULT)
        .read(new SourceText("a.yaml", text.replace("\\n", "\n").replace("\\t", "\t")))
        .findings();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '^',
      value = {
        "a:2\\nb: 1|1:2|a space is missing after the colon of \"a\"|write a: 2|a: 2\\nb: 1",
        "a:2\\n\\nb: 1|1:2|a space is missing after the colon of \"a\"|write a: 2|a: 2\\n\\nb: 1",
        "- a:x y\\n  b: 1|1:4|a space is missing after the colon of \"a\"|write a: x y|- a: x y\\n  b: 1",
        "x: 1\\na-b:2\\nb: 1|2:4|a space is missing after the colon of \"a-b\"|write a-b: 2|x: 1\\na-b: 2\\nb: 1",
        "x:\\n  - a: 1\\n  -b: 2|3:3|a space is missing after the hyphen|write - b: 2|x:\\n  - a: 1\\n  - b: 2",
        "x: 1\\nplain words\\nb: 1|2:1|a key is expected here, but no colon follows this text|write the key, a colon|x: 1\\nplain: words\\nb: 1",
        "a: 1\\n\\tb: 1|2:1|a tab is used for indentation|indent with spaces|a:\\n  b: 1",
        "a: x: y|1:5|one value has a second colon|put the value in quotes|a: \"x: y\"",
        "a: 1\\n  b: 2|2:4|the line above already has a value, but this key is indented|line the keys up|a: 1\\nb: 2",
        "x:\\n- a: none\\n\\n    b: 2|4:6|the line above already has a value, but this key|delete the value|x:\\n- a:\\n\\n    b: 2",
        "a: # none\\n  x\\n  b: 2|3:4|the line above has no colon, or this one is indented|write a colon|a: # none\\n  x:\\n  b: 2",
        "a:\\n  b: 1\\n c: 2|3:2|this line is indented differently|line it up|a:\\n  b: 1\\n  c: 2",
        "- a: 1\\n - b: 2|2:2|this line is indented differently|line it up|- a: 1\\n- b: 2",
        "a: 1\\n- b|2:1|a list item is among keys|put the list under a key|a:\\n- b",
        "a: [1, 2|1:4|the list between brackets that starts here is not closed|write ]|a: [1, 2]",
        "a: [1, 2\\nb: 1|1:4|the list between brackets that starts here is not closed|write ]|a: [1, 2]\\nb: 1",
        "a: {b: 1\\nc: 1|1:4|the mapping between brackets that starts here|write }|a: {b: 1}\\nc: 1",
        "a: [1, 2}|1:9|the list is closed with \"}\"|write ] in its place|a: [1, 2]",
        "a: {b: 1]|1:9|the mapping is closed with \"]\"|write } in its place|a: {b: 1}",
        "a: [b c: [1] d]|1:14|a comma is missing|write a comma between two items|a: [b c: [1], d]",
        "a: {b: c d: e}|1:11|a comma is missing|write a comma between two items|a: {b: c, d: e}",
        "a: [b]]|1:7|\"]\" closes a bracket that is not open|delete it|a: [b]",
        "a: ]|1:4|\"]\" is where a value is expected|write the value|a: \"]\"",
        "a: \"b|1:4|the quoted text that starts here has no closing quote|write the closing quote|a: \"b\"",
        "a: 'b's c'|1:7|something follows the end of the value|in one pair of double quotes|a: \"b's c\"",
        "a: \"b\" c|1:8|something follows the end of the value|in one pair of double quotes|a: \"b c\"",
        "a:\\n  b: [c\\n] d: e|3:3|something follows the end of the value|write it on a line of its own|a:\\n  b: [c\\n  ]\\n  d: e",
        "a: \"\\d\"|1:6|this backslash sequence|write two backslashes|a: \"\\\\d\"",
        "a: @b|1:4|\"@\" cannot start a value|put the value in quotes|a: \"@b\"",
        "a: %b|1:4|\"%\" cannot start a value|put the value in quotes|a: \"%b\"",
        "a: - b|1:4|a list starts on the line of its key|start it on the next line|a:\\n  - b",
        "a: ? b|1:4|a value starts with \"?\" and a space|put the value in quotes|a: \"? b\"",
        "a: & b|1:5|the anchor or alias has no name|put the value in quotes|a: \"& b\"",
        "a: !b!c d|1:4|the tag cannot be read|delete the tag|a: d",
        "a: !<b|1:7|the tag cannot be read|put the value in quotes|a: \"!<b\"",
        "a: >b|1:5|text follows the sign|write the text on the lines below|a: >\\n  b",
        "%YAML 9.1\\n---\\na: 1|1:1|this line starts with %|delete the line|---\\na: 1",
        "%YAML 1.1\\na: 1|2:1|the document cannot start|delete the line above|a: 1",
        "a: 1\\n...\\nb: 1|3:1|the document cannot start or go on here|delete the line above|a:"
            + " 1\\nb: 1"
      })
  void areThoseOfTheTrade(String text, String place, String fact, String remedy, String mended) {
    List<Finding> findings = findings(text);
    assertThat(findings).hasSize(1);
    Finding finding = findings.get(0);
    Region region = finding.place().region();
    assertThat(finding.rule()).isEqualTo("yaml.syntax");
    assertThat(finding.message().fact()).startsWith(fact);
    assertThat(finding.message().remedy()).contains(remedy);
    assertThat(region.startLine() + ":" + region.startColumn()).isEqualTo(place);
    assertThat(findings(mended)).as(mended).isEmpty();
  }

  /** YAML 1.1, section 7.3: a key in front of its colon has 1024 characters at most. */
  @Test
  void aKeyOfTwoThousandCharactersHasNoLineAbove() {
    assertThat(findings("a".repeat(2000) + ": 1"))
        .singleElement()
        .satisfies(
            finding ->
                assertThat(finding.message().fact())
                    .isEqualTo("the text before the colon is not a key"));
  }

  /** YAML 1.1, section 5.6: two, four or eight hexadecimal digits, up to 10FFFF. */
  @ParameterizedTest
  @ValueSource(
      strings = {"\"\\x", "\"\\u", "a: \"\\U", "a: \"\\U80000000\"", "a: \"\\UFFFFFFFF\"\nb: 1"})
  void anEscapeThatIsNoCharacterIsTold(String text) {
    assertThat(findings(text))
        .singleElement()
        .satisfies(
            finding -> {
              assertThat(finding.rule()).isEqualTo("yaml.syntax");
              assertThat(finding.message().fact()).startsWith("the backslash ");
              assertThat(finding.place().region().startColumn()).isEqualTo(text.indexOf('\\') + 3);
            });
  }
}
