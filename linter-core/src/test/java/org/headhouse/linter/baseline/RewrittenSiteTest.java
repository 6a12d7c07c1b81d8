package org.headhouse.linter.baseline;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.params.provider.Arguments.arguments;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Example;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** A result stays the same one while its site is rewritten, and another one while it is not. */
class RewrittenSiteTest {
  private static final String FILE = "sites/example.yaml";

  /** Three faults, all at the unit in the middle and at the cable. */
  private static final String FAULTY =
      Example.with("termination: none", "termination: 120 ohm")
          .replace(
              "conductors: [A, B]\n    termination: 120 ohm\n    outdoor: {light: head, temperature: head}\n    cable",
              "conductors: [A]\n    termination: 120 ohm\n    outdoor: {light: head, temperature: none}\n    cable")
          .replace("shielded: true", "shielded: false");

  private static final List<String> FAULTS =
      List.of(
          "cable.unshielded line/cable/shielded",
          "conductors.pair-missing chain/Seedling North/conductors",
          "termination.mid-line chain/Seedling North/termination",
          "outdoor.not-from-head chain/Seedling North/outdoor/temperature");

  @TempDir private Path folder = Path.of("");
  private OldDebt debt = new OldDebt(folder);

  @BeforeEach
  void takeTheFaults() throws IOException {
    debt = new OldDebt(folder);
    debt.take(Map.of(FILE, FAULTY));
  }

  private CheckReport check(String text) throws IOException {
    return debt.check(Map.of(FILE, text));
  }

  @Test
  void theFaultsAreThose() throws IOException {
    CheckReport same = check(FAULTY);
    assertThat(OldDebt.fresh(same)).isEmpty();
    assertThat(OldDebt.absent(same)).isEmpty();
    assertThat(same.known().stream().map(result -> result.rule() + " " + result.logical()))
        .containsExactlyElementsOf(FAULTS);
  }

  static Stream<Arguments> rewritten() {
    return Stream.of(
        arguments("comments", "(?m)$", " # seen"),
        arguments("empty lines", "(?m)^(\\S)", "\n\n$1"),
        arguments("line ends", "\n", "\r\n"),
        arguments("quotes", "(unit|termination): (.+)", "$1: \"$2\""),
        arguments("wider", ": (?=\\S)", ":   "),
        arguments("a block list", "conductors: \\[A]", "conductors:\n      - A"),
        arguments("an anchor", "conductors: \\[A]", "conductors: &a [A]"),
        arguments(
            "a block of readings",
            "outdoor: \\{light: head, temperature: none}",
            "outdoor:\n      temperature: none\n      light: head"),
        arguments("reordered keys", "(termination: 120 ohm)\n    (outdoor: .*none.)", "$2\n    $1"),
        arguments("a title", "(site: example)", "title: Example\n$1"),
        arguments("another cable", "gauge: 24 AWG", "gauge: 22 AWG"),
        arguments("a false in capitals", "shielded: false", "shielded: False"),
        arguments(
            "a folded scalar",
            "termination: 120 ohm\n    outdoor: (.*none)",
            "termination: >-\n      120\n      ohm\n    outdoor: $1"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rewritten")
  void aRewrittenFileHasNothingNew(String what, String from, String to) throws IOException {
    String rewritten = FAULTY.replaceAll(from, to);
    assertThat(rewritten).isNotEqualTo(FAULTY);
    CheckReport report = check(rewritten);
    assertThat(OldDebt.fresh(report)).as(rewritten).isEmpty();
    assertThat(OldDebt.absent(report)).isEmpty();
  }

  /** Behind an alias or a merge key a result points elsewhere, and is the same. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          conductors: [A]                            | &pair [A]                               | conductors: *pair
          outdoor: {light: head, temperature: none} | &from {light: head, temperature: none} | outdoor: *from
          conductors: [A]                            | &wired {conductors: [A]}                | <<: *wired
          """)
  void aSharedValueIsNotNew(String written, String anchored, String alias) throws IOException {
    String shared =
        FAULTY
            .replace(written, alias)
            .replaceFirst("role: head", "role: head\n    title: " + anchored);
    CheckReport report = check(shared);
    assertThat(OldDebt.fresh(report)).containsExactly("schema.unknown-key chain/Propagation/title");
    assertThat(OldDebt.absent(report)).isEmpty();
  }

  @Test
  void aUnitThatMovesAlongTheChainTakesItsResultsAlong() throws IOException {
    int start = FAULTY.indexOf("  - unit: Seedling North");
    int end = FAULTY.indexOf("  - unit: Hardening Bay");
    String between = FAULTY.substring(start, end);
    String inserted =
        FAULTY.substring(0, start)
            + between
                .replace("Seedling North", "Mist House")
                .replace("[A]", "[A, B]")
                .replace("temperature: none", "temperature: head")
                .replace("120 ohm", "none")
                .replace("address: 2", "address: 2")
            + between.replace("address: 2", "address: 3")
            + FAULTY.substring(end).replace("address: 3", "address: 4");
    CheckReport report = check(inserted);
    assertThat(OldDebt.fresh(report)).isEmpty();
    assertThat(OldDebt.absent(report)).isEmpty();
    assertThat(report.known()).hasSize(FAULTS.size());
  }

  static Stream<Arguments> otherFaults() {
    String middle = "chain/Seedling North/";
    return Stream.of(
        arguments(
            "another value",
            "termination: 120 ohm\n    outdoor: (.*none)",
            "termination: 150 ohm\n    outdoor: $1",
            List.of("termination.mid-line " + middle + "termination"),
            List.of("termination.mid-line " + middle + "termination")),
        arguments(
            "another source",
            "temperature: none",
            "temperature: local",
            List.of("outdoor.not-from-head " + middle + "outdoor/temperature"),
            List.of("outdoor.not-from-head " + middle + "outdoor/temperature")),
        arguments(
            "another reading",
            "light: head, temperature: none",
            "light: none, temperature: head",
            List.of("outdoor.not-from-head " + middle + "outdoor/light"),
            List.of("outdoor.not-from-head " + middle + "outdoor/temperature")),
        arguments(
            "a second unit",
            "\\[A, B]",
            "[B]",
            List.of("conductors.pair-missing chain/Hardening Bay/conductors"),
            List.of()),
        arguments(
            "another rule",
            "parity: even",
            "parity: none",
            List.of("serial.framing line/stop-bits"),
            List.of()),
        arguments(
            "mended",
            "conductors: \\[A]",
            "conductors: [B, A]",
            List.of(),
            List.of("conductors.pair-missing " + middle + "conductors")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("otherFaults")
  void anotherFaultIsNew(
      String what, String from, String to, List<String> fresh, List<String> absent)
      throws IOException {
    CheckReport report = check(FAULTY.replaceAll(from, to));
    assertThat(OldDebt.fresh(report)).isEqualTo(fresh);
    assertThat(OldDebt.absent(report)).isEqualTo(absent);
  }

  /** A name that no file can hold is known again all the same. */
  @Test
  void aNameWithHalfACharacter() throws IOException {
    Map<String, String> texts =
        Map.of(FILE, FAULTY.replace("unit: Hardening Bay", "unit: \"Bay \\uD800 x\""));
    assertThat(debt.take(texts)).contains("name.unreadable");
    assertThat(OldDebt.fresh(debt.check(texts))).isEmpty();
  }

  /** Two units of one name have one place, so their faults are counted. */
  @Test
  void equalFaultsAreCounted() throws IOException {
    String twins = FAULTY.replace("Hardening Bay", "Seedling North").replace("[A, B]", "[A]");
    assertThat(debt.take(Map.of(FILE, twins)))
        .contains("\"rule\":\"conductors.pair-missing\",\"value\":\"[A]\",\"times\":2}");
    CheckReport both = check(twins);
    assertThat(OldDebt.fresh(both)).isEmpty();
    CheckReport one = check(twins.replaceFirst("\\[A\\]", "[A, B]"));
    assertThat(OldDebt.fresh(one)).isEmpty();
    assertThat(one.absent())
        .singleElement()
        .satisfies(absent -> assertThat(absent.times()).isEqualTo(1));
    debt.take(Map.of(FILE, twins.replaceFirst("\\[A\\]", "[A, B]")));
    assertThat(OldDebt.fresh(check(twins)))
        .containsExactly("conductors.pair-missing chain/Seedling North/conductors");
  }
}
