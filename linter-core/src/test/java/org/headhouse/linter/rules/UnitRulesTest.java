package org.headhouse.linter.rules;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Module, firmware and rate of units, and the runs between them: common practice, no source. */
class UnitRulesTest {
  private static final LineCheck SITE =
      LineCheck.of(
              new SiteText()
                  .unit("120 ohm", "10 m", "device-type: box")
                  .unit("none", "10 m", "device-type: box")
                  .unit("none", "10 m", "device-type: vent-box")
                  .unit("120 ohm", "", "device-type: box"))
          .types("id: box, unit-load: 1/8", "id: vent-box, unit-load: 1/8");

  private static List<String> reported(LineCheck check) {
    return check.results().stream().map(one -> one.message().fact()).toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "fitted   | needed   |",
        "fitted   | built-in |",
        "built-in | built-in |",
        "built-in |          |",
        "built-in | needed   | \"Bay 2\" counts on a built-in communication module that its type does not have",
        "absent   | needed   | \"Bay 2\" has no communication module",
        "absent   | built-in | \"Bay 2\" has no communication module",
      })
  void everyUnitReachesTheLine(String module, String type, String fact) {
    LineCheck check =
        SITE.with("address: 2\n    comm-module: fitted", "address: 2\n    comm-module: " + module)
            .types(
                "id: box, unit-load: 1/8" + (type == null ? "" : ", comm-module: " + type),
                "id: vent-box");
    assertThat(reported(check)).containsExactlyElementsOf(fact == null ? List.of() : List.of(fact));
  }

  /** The firmware of the four units in the order of the chain; the third is of another type. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "3.1 3.1 3.1 3.1 |",
        "3.1 3.1 4.0 3.1 |",
        "- 3.1 4.0 3.1   |",
        "3.1 - 4.0 -     |",
        "3.1 3.2 4.0 3.1 | \"Bay 2\" has firmware 3.2, but \"Head House\" of the same type has 3.1",
        // Each other version once.
        "3.1 3.2 4.0 3.2 | \"Bay 2\" and 1 other have firmware 3.2, but \"Head House\" of the same type has 3.1",
        "3.1 3.2 4.0 3.3 | \"Bay 2\" has firmware 3.2, but \"Head House\" of the same type has 3.1; \"Bay 4\" has firmware 3.3, but \"Head House\" of the same type has 3.1",
      })
  void unitsOfATypeHaveOneFirmware(String versions, String facts) {
    LineCheck check = SITE;
    String[] each = versions.split(" ", -1);
    for (int i = 0; i < each.length; i++) {
      if (!each[i].equals("-")) {
        String address = "address: " + (i + 1) + "\n";
        check = check.with(address, address + "    firmware: \"" + each[i] + "\"\n");
      }
    }
    assertThat(reported(check))
        .containsExactlyElementsOf(facts == null ? List.of() : List.of(facts.split("; ", -1)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'[9600, 19200]'   |",
        "'[19200, 9600]'   |",
        "'[19200]'         | set all units and the line to a rate that every type has; this one has 19200",
        "'[1200, 19200]'   | set all units and the line to a rate that every type has; this one has 1200, 19200",
        // What is not understood may be the rate of the line.
        "'[19200, some]'   |",
        "some              |",
      })
  void everyTypeHasTheRateOfTheLine(String rates, String remedy) {
    List<Result> results =
        SITE.types("id: box, unit-load: 1/8, baud-rates: " + rates, "id: vent-box").results();
    assertThat(results.stream().filter(one -> one.rule().equals("serial.unsupported")))
        .extracting(one -> one.message().remedy())
        .containsExactlyElementsOf(remedy == null ? List.of() : List.of(remedy));
  }

  @Test
  void eachTypeThatLacksTheRateIsReported() {
    String lacking = ", unit-load: 1/8, baud-rates: [19200]";
    assertThat(SITE.types("id: box" + lacking, "id: vent-box" + lacking).reported())
        .containsExactly("error serial.unsupported", "error serial.unsupported");
  }

  /** Surge protection where a cable leaves a building; the local electrical code decides. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "run-to-next: inside |",
        "surge-protection-to-next: none |",
        "run-to-next: between-buildings, surge-protection-to-next: fitted |",
        "run-to-next: between-buildings, surge-protection-to-next: none | none",
        "run-to-next: between-buildings | between-buildings",
      })
  void aRunBetweenBuildingsIsProtected(String keys, String marked) {
    LineCheck check =
        SITE.with("address: 2\n", "address: 2\n    " + keys.replace(", ", "\n    ") + "\n");
    assertThat(check.reported().stream().filter(one -> one.endsWith("run.unprotected")))
        .containsExactlyElementsOf(marked == null ? List.of() : List.of("warning run.unprotected"));
    if (marked != null) {
      assertThat(check.marked("run.unprotected")).isEqualTo(marked);
    }
  }
}
