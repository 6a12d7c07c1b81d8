package org.headhouse.linter.report.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The record that a sheet offers can be pasted as it is, and then proves nothing. */
class CommissioningRecordTest {

  static List<String> sites() {
    try (Stream<Path> files = Files.walk(Sheets.SAMPLES.resolve("sites"))) {
      return Stream.concat(
              Stream.of(Example.SITE, Hostile.site()),
              files.filter(Files::isRegularFile).sorted().map(CommissioningRecordTest::read))
          .toList();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  @ParameterizedTest
  @MethodSource("sites")
  void aSiteWithItUntouchedIsNotProved(String site) {
    List<String> added = new ArrayList<>(rules(pasted(site, record(site))));
    added.removeAll(rules(site));
    assertThat(added)
        .containsExactlyInAnyOrder(
            "commissioning.placeholder",
            "commissioning.unit-unseen",
            "commissioning.unmeasured",
            "commissioning.response-unseen");
  }

  /** The site with a record in place of its stage and of the record that it had. */
  private static String pasted(String site, String record) {
    String pasted =
        site.replaceAll("(?ms)^commissioning:\\n(?:  .*\\n)+", "")
            .replaceFirst("(?m)^stage: .*\\n", Matcher.quoteReplacement(record));
    assertThat(pasted).contains("stage: commissioned\ncommissioning:\n");
    return pasted;
  }

  private static List<String> rules(String site) {
    CheckReport report = Sheets.linter(1).check(Stream.of(SiteInput.text("example.yaml", site)));
    return report.results().stream()
        .map(Result::rule)
        .filter(rule -> !rule.equals("site.file-name"))
        .distinct()
        .toList();
  }

  private static String record(String site) {
    return Sheets.page(site).expectFirst("[aria-label=Commissioning record] pre").wholeText();
  }

  /** Nobody's signature and no measured value are in it before somebody writes them. */
  @Test
  void itSaysNothingThatNobodyHasSeen() {
    assertThat(record(Example.with("address: 2\n", "address: 2\n    vents: none\n")))
        .isEqualTo(
            """
            stage: commissioned
            commissioning:
              date: "?"  # the day of the visit, as 2026-03-14
              by: "?"  # the name of who proved the line
              # Of the lines below keep what was really measured and seen: fill in each ___,
              # and delete the # and nothing else. Delete what was not measured or not seen.
              #meter: {type: "___", serial-number: "___", calibrated-until: ____-__-__}
              #measured:
              #  pair-resistance: ___ ohm  # at the head unit
              #  idle-voltage: ___ V  # at the head unit, D1 against D0: with its sign
              #  elsewhere:
              #    - {at: "Hardening Bay", pair-resistance: ___ ohm, idle-voltage: ___ V}
              #outdoor-readings-seen:  # the followers whose display showed them
              #  - "Seedling North"
              #  - "Hardening Bay"
              #storm-response-seen:  # vents shut over the wind limit of the unit; the time by the watch
              #  - {unit: "Propagation", limit: ___ m/s, closed-in: ___ s}
              #  - {unit: "Hardening Bay", limit: ___ m/s, closed-in: ___ s}
              #stale-response-seen:  # vents shut when the readings stopped
              #  - "Propagation"
              #  - "Hardening Bay"
            """);
  }

  /** The head unit has keys of its own; each side of a repeater is a place. */
  @Test
  void everyPlaceThatTheSheetAsksForHasALine() {
    String text =
        new SiteText()
            .unit("120 ohm", "100 m")
            .unit("none", "50 m")
            .repeater("Road", "120 ohm", "20 m")
            .unit("120 ohm", "")
            .toString()
            .replace(
                "chain:\n",
                "chain:\n  - {converter: Office, termination: 120 ohm, cable-to-next: 2 m}\n");
    assertThat(record(text).lines().filter(line -> line.contains("{at: ")))
        .extracting(line -> line.substring(line.indexOf("at: "), line.indexOf(", pair-res")))
        .containsExactly("at: \"Road\", side: in", "at: \"Road\", side: out", "at: \"Bay 3\"");
  }

  /**
   * Whether an editor takes the space behind the mark of a comment as well or not, what is left has
   * its place.
   */
  @ParameterizedTest
  @ValueSource(strings = {"#", "# ?"})
  void everyLineIsValidOnceItIsCompleted(String mark) {
    for (String site : sites()) {
      String completed =
          record(site)
              .replace("date: \"?\"", "date: 2026-03-14")
              .replace("by: \"?\"", "by: R.O.")
              .replace("____-__-__", "2027-01-31")
              .replace("___ ohm", "58 ohm")
              .replace("___ V", "0.24 V")
              .replace("___ m/s", "12 m/s")
              .replace("___ s", "85 s")
              .replaceAll("(?m)^  # (Of|and) .*\\n", "")
              .replaceAll("(?m)^  " + mark, "  ");
      assertThat(completed).doesNotContain("___ ").contains("\n  measured:");
      assertThat(rules(pasted(site, completed)))
          .noneMatch(
              rule ->
                  rule.startsWith("yaml.")
                      || rule.startsWith("schema.")
                      || rule.startsWith("reference.")
                      || rule.equals("commissioning.placeholder")
                      || rule.equals("commissioning.unmeasured")
                      || rule.endsWith("-unseen"));
    }
  }
}
