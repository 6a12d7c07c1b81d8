package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** An item that is written as what it is not is one mistake, and the schema tells it once. */
class ItemsOfTheChainTest {
  private static final String UNIT =
      """
        - unit: Seedling North
          role: follower
          address: 2
          comm-module: fitted
          conductors: [A, B]
          termination: none
          outdoor: {light: head, temperature: head}
          cable-to-next: 60 m
      """;

  private static String with(String item) {
    return Example.with(UNIT, item.replace("\\n", "\n    ").replaceFirst("^", "  ") + "\n");
  }

  private static List<Result> schemaResults(String text) {
    return Checks.of(text).results().stream()
        .filter(result -> result.rule().startsWith("schema."))
        .toList();
  }

  /** The mended item is the faulty one with the remedy followed. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "- unit: East\\ntermination: {in: 120 ohm, out: 120 ohm}|15:5|\"East\" is written as a unit"
            + "|write \"repeater\" in place of \"unit\"|- repeater: East\\ntermination: {in: 120 ohm, out: 120 ohm}",
        "- unit: East\\ntermination: {in: 120}\\ncable-to-next: 4 m|15:5|\"East\" is written as a unit"
            + "|write \"repeater\" in place of \"unit\"|- repeater: East",
        "- repeatr: East\\ntermination: {in: 120 ohm}|15:5|unknown key \"repeatr\""
            + "|write \"repeater\"|- repeater: East\\ntermination: {in: 120 ohm}",
        "- repeater: East\\nrole: follower\\naddress: 2\\ncomm-module: fitted\\nconductors: [A, B]|15:5"
            + "|\"East\" is written as a repeater|write \"unit\" in place of \"repeater\""
            + "|- unit: East\\nrole: follower\\naddress: 2\\ncomm-module: fitted\\nconductors: [A, B]",
        "- name: East|15:5|item 2 of \"chain\" is not a unit, repeater, equipment or converter"
            + "|add \"unit\" with its name, role and address, or \"repeater\", \"equipment\" or \"converter\" with its name|- repeater: East",
        "- termination: {in: none}|15:5|item 2 of \"chain\" is not a unit, repeater, equipment"
            + " or converter"
            + "|add \"repeater\" with its name|- repeater: East\\ntermination: {in: none}",
        "- {}|15:5|item 2 of \"chain\" is not a unit, repeater, equipment or converter"
            + "|add \"unit\" with its name, role and address, or \"repeater\", \"equipment\" or \"converter\" with its name|- {repeater: East}",
        "- East|15:5|item 2 of \"chain\" is \"East\""
            + "|write its keys under it, indented: unit, role, address, comm-module and conductors"
            + "|- repeater: East"
      })
  void areToldOnce(String item, String place, String fact, String remedy, String mended) {
    List<Result> results = schemaResults(with(item));
    assertThat(results).hasSize(1);
    Result result = results.get(0);
    assertThat(
            result.location().region().startLine() + ":" + result.location().region().startColumn())
        .isEqualTo(place);
    assertThat(result.message().fact()).startsWith(fact);
    assertThat(result.message().remedy()).isEqualTo(remedy);
    assertThat(schemaResults(with(mended))).isEmpty();
  }

  /** What is no more than incomplete or misspelt keeps its own results. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "- unit: East\\nrole: follower|\"East\" lacks the key \"address\"",
        "- unti: East\\nrole: follower\\naddress: 2\\ncomm-module: fitted\\nconductors: []"
            + "|unknown key \"unti\"",
        "- repeater: East\\naddress: 2|unknown key \"address\"",
        "- unit: East\\nrole: follower\\naddress: 2\\ncomm-module: fitted\\nconductors: []\\ntermination: {in: none}"
            + "|\"termination\" is a mapping"
      })
  void areUnitsAndRepeatersOtherwise(String item, String fact) {
    assertThat(schemaResults(with(item)))
        .extracting(result -> result.message().fact())
        .contains(fact);
  }
}
