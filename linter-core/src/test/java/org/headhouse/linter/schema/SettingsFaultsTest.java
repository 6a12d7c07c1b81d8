package org.headhouse.linter.schema;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is said of the two files that apply to all sites, and that the remedies fix it. */
class SettingsFaultsTest {

  private static List<Result> ofTypes(String types) throws IOException {
    String text = "format: 1\ndevice-types:\n" + types.replace("\\n", "\n") + "\n";
    return SiteLinter.builder()
        .deviceTypes(SiteInput.text("device-types.yaml", text))
        .build()
        .checkText("example.yaml", Example.SITE)
        .results();
  }

  private static List<Result> ofPolicy(String rules) throws IOException {
    String text = "format: 1\nrule-set: 1\n" + rules.replace("\\n", "\n") + "\n";
    return SiteLinter.builder()
        .policy(SiteInput.text("linter.yaml", text))
        .withoutBaseline()
        .build()
        .checkText("example.yaml", Example.SITE)
        .results();
  }

  private static void assertTold(List<Result> results, String fact, String remedy) {
    assertThat(results).hasSize(1);
    assertThat(results.get(0).message().fact()).isEqualTo(fact);
    assertThat(results.get(0).message().remedy()).isEqualTo(remedy);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "- {id: a, unit-load: 1/0}|\"unit-load\" cannot be \"1/0\"|write for example 1/8, 1/2 or 1|- {id: a, unit-load: 1/2}",
        "- {id: a, unit-load: 1 / 8}|\"unit-load\" cannot be \"1 / 8\"|write 1/8|- {id: a, unit-load: 1/8}",
        "- {id: a, unit-load: 0}|\"unit-load\" cannot be 0|write for example 1/8, 1/2 or 1|- {id: a, unit-load: 1}",
        "- {id: a, unit-load: 1e-1}|1e-1 is unquoted|write 0.1|- {id: a, unit-load: 0.1}",
        "- {id: a, rise-time: 100}|\"rise-time\" has no unit after 100|write 100 ns|- {id: a, rise-time: 100 ns}",
        "- {id: a, baud-rates: 9600}|\"baud-rates\" is the number 9600|write [9600]|- {id: a, baud-rates: [9600]}",
        "- {id: a, baud-rates: [9600, 9600]}|9600 appears twice in \"baud-rates\"|delete one of the two|- {id: a, baud-rates: [9600]}",
        "- {id: a, ethernet: no}|\"no\" is unquoted|write false|- {id: a, ethernet: false}",
        "- {title: A}|item 1 of \"device-types\" lacks the key \"id\"|add \"id\", for example id: eight-way|- {title: A, id: eight-way}",
        "\\n  id: a|\"device-types\" is a mapping|put a hyphen and a space before its first key, and indent the other keys to match|- id: a",
        "\\n  a: {}|\"device-types\" is a mapping|write each item under it, indented, with a hyphen and a space in front|- id: a"
      })
  void inDeviceTypes(String types, String fact, String remedy, String mended) throws IOException {
    assertTold(ofTypes(types), fact, remedy);
    assertThat(ofTypes(mended)).isEmpty();
  }

  @Test
  void anIdThatIsUsedTwiceIsToldAtTheSecond() throws IOException {
    List<Result> results = ofTypes("  - id: a\n  - id: b\n  - {title: A, id: a, unit-load: 1/8}");
    assertTold(
        results,
        "the id \"a\" is used twice",
        "give one of the two an id of its own, or delete it");
    Result result = results.get(0);
    assertThat(result.rule()).isEqualTo("schema.bad-value");
    assertThat(result.location().region().startLine()).isEqualTo(5);
    assertThat(result.related())
        .singleElement()
        .satisfies(
            first -> {
              assertThat(first.location().region().startLine()).isEqualTo(3);
              assertThat(first.text()).isEqualTo("\"a\" is first used here");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "rules: {address.gap: none}|\"address.gap\" is \"none\"|write {level: none}|rules: {address.gap: {level: none}}",
        "rules: {address.gap: 3}|\"address.gap\" is the number 3"
            + "|write its keys under it, indented: level and parameters|rules: {address.gap: {parameters: {}}}",
        "rules: {address.gap: }|\"address.gap\" has no value"
            + "|write its keys under it, indented: level and parameters|rules: {address.gap: {level: note}}",
        "rules:|\"rules\" has no value|write its keys under it, indented, or delete it|",
        "rules: {conductors.ground: {parameters: {landed: {a: b}}}}|\"landed\" is a mapping"
            + "|write a value, or delete the key|rules: {conductors.ground: {parameters: {landed: head}}}",
        "baseline: 3|\"baseline\" is the number 3|write \"3\" in quotes|baseline: \"3\""
      })
  void inThePolicy(String rules, String fact, String remedy, String mended) throws IOException {
    assertTold(ofPolicy(rules), fact, remedy);
    assertThat(ofPolicy(mended == null ? "" : mended)).isEmpty();
  }
}
