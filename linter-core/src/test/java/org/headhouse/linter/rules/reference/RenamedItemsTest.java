package org.headhouse.linter.rules.reference;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.Fixing;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.FixKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A new name is followed wherever the old one is, and no two units are taken for one. */
class RenamedItemsTest {
  private static final String BEFORE =
      """
      format: 1
      site: example
      stage: commissioned
      weather-station: {at: Propagation, readings: [light, temperature]}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
        bias: [{at: Propagation, resistors: 510 ohm, supply: 5 V}]
      chain:
        - unit: Propagation
          role: head
          address: 1
          serial-number: HH-0001
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: {light: local, temperature: local}
          cable-to-next: 40 m
        - unit: Seedling North
          role: follower
          address: 2
          serial-number: HH-0002
          comm-module: fitted
          conductors: [A, B]
          termination: none
          outdoor: {light: head, temperature: head}
          vents: roof
          on-stale-readings: hold
          cable-to-next: 60 m
        - unit: Hardening Bay
          role: follower
          address: 3
          comm-module: fitted
          conductors: [A, B]
          termination: none
          outdoor: {light: head, temperature: head}
          cable-to-next: 20 m
        - converter: Office
          termination: 120 ohm
      supervision:
        link: serial
        at: Office
        zones: [Propagation, Seedling North, Hardening Bay]   # as in the software
      commissioning:
        date: 2026-03-14
        by: R.O.
        measured: {pair-resistance: 60 ohm, idle-voltage: 0.29 V, elsewhere: [{at: Seedling North, idle-voltage: 0.29 V}]}
        outdoor-readings-seen: [Seedling North, Hardening Bay]
        storm-response-seen: [{unit: Seedling North, limit: 12 m/s, closed-in: 60 s}]
        stale-response-seen: [Seedling North]
        renewed: [{date: 2026-05-01, by: R.O., reason: Seen again., outdoor-readings-seen: [Seedling North]}]
      suppressions:
        - {rule: outdoor.age-unknown, justification: Known.}
        - {rule: outdoor.unsafe-fallback, unit: Seedling North, justification: Screens only.}
      """;

  private static SiteLinter since(String before) throws IOException {
    return SiteLinter.builder()
        .before(SiteState.named("HEAD~1", Stream.of(SiteInput.text("example.yaml", before)), null))
        .build();
  }

  /** The name on the chain alone, as somebody writes another there. */
  private static String renamed(String kind, String from, String to) {
    return BEFORE.replace("  - " + kind + ": " + from + "\n", "  - " + kind + ": " + to + "\n");
  }

  private static List<String> stale(SiteLinter linter, String text) {
    return linter.checkText("example.yaml", text).results().stream()
        .filter(
            result ->
                List.of("reference.unknown", "supervision.zone-unknown", "supervision.zone-missing")
                    .contains(result.rule()))
        .map(TextReport::inOneLine)
        .toList();
  }

  @ParameterizedTest
  @CsvSource({
    "unit, Seedling North, Young Plants, 7",
    "unit, Propagation, Head House, 3",
    "converter, Office, Gate House, 1",
  })
  void oneFixFollowsTheNewNameEverywhere(String kind, String from, String to, int places)
      throws IOException {
    String after = renamed(kind, from, to);
    SiteLinter linter = since(BEFORE);
    assertThat(stale(linter, after))
        .hasSize(places)
        .allSatisfy(
            line ->
                assertThat(line)
                    .contains('"' + to + "\" was called \"" + from + "\" in HEAD~1: ")
                    .contains("write \"" + to + "\" here and wherever else the old name is used"));
    var fixed = Fixing.outcome(linter, SiteInput.text("example.yaml", after), FixKind.SAFE);
    assertThat(new String(fixed.after(), UTF_8)).isEqualTo(BEFORE.replace(from, to));
    assertThat(fixed.applied()).hasSize(1);
    // Without an earlier state nobody can know.
    assertThat(stale(SiteLinter.builder().build(), after))
        .isNotEmpty()
        .noneMatch(line -> line.contains("was called"));
  }

  /** What was proved at the unit under its old name is proved. */
  @Test
  void aNewNameTakesNoProofAway() throws IOException {
    String after = renamed("unit", "Seedling North", "Young Plants");
    assertThat(since(BEFORE).checkText("example.yaml", after).results())
        .filteredOn(result -> result.rule().startsWith("commissioning."))
        .isNotEmpty()
        .noneMatch(result -> TextReport.inOneLine(result).contains("Young Plants"));
  }

  private static String with(String text, String... pairs) {
    String changed = text;
    for (int i = 0; i < pairs.length; i += 2) {
      assertThat(changed).contains(pairs[i]);
      changed = changed.replace(pairs[i], pairs[i + 1]);
    }
    return changed;
  }

  /** Its address is another too, or it is at another place: that may be another unit. */
  @ParameterizedTest
  @CsvSource({
    "address: 2, address: 7",
    "'cable-to-next: 40 m\n', 'cable-to-next: 40 m\n  - equipment: Meter\n    address: 57\n    conductors: [A, B]\n    termination: none\n    cable-to-next: 1 m\n'"
  })
  void whatMayBeAnotherUnitIsProposedOnly(String text, String other) throws IOException {
    String before = with(BEFORE, "role: follower\n", "role: follower\n    device-type: box\n");
    String after =
        with(
            before.replace("- unit: Seedling North\n", "- unit: Young Plants\n"),
            text.translateEscapes(),
            other.translateEscapes());
    SiteLinter linter = since(before);
    assertThat(stale(linter, after))
        .isNotEmpty()
        .allSatisfy(
            line ->
                assertThat(line)
                    .contains(
                        "nothing is called \"Seedling North\" any more; its name may now be"
                            + " \"Young Plants\": ")
                    .contains("if it is the same unit, write \"Young Plants\"; "));
    assertThat(Fixing.fix(linter, "example.yaml", after, FixKind.SAFE))
        .contains("zones: [Propagation, Seedling North, ", "stale-response-seen: [Seedling North]");
    assertThat(Fixing.fix(linter, "example.yaml", after, FixKind.PROPOSED))
        .contains("zones: [Propagation, Young Plants, ", "stale-response-seen: [Young Plants]");
  }

  /** Another serial number or type is another unit; what was seen at the old one proves nothing. */
  @ParameterizedTest
  @CsvSource({"serial-number: HH-0002, serial-number: HH-0099", "vents: roof, vents: roof"})
  void anotherUnitIsNotTheSameUnderAnotherName(String text, String other) throws IOException {
    String after = with(renamed("unit", "Seedling North", "Young Plants"), text, other);
    String before =
        text.startsWith("vents")
            ? with(
                BEFORE,
                "role: follower\n    address: 2",
                "role: follower\n    device-type: old\n    address: 2")
            : BEFORE;
    if (text.startsWith("vents")) {
      after =
          with(
              after,
              "role: follower\n    address: 2",
              "role: follower\n    device-type: new\n    address: 2");
    }
    SiteLinter linter = since(before);
    assertThat(stale(linter, after))
        .isNotEmpty()
        .noneMatch(line -> line.contains("was called") || line.contains("its name may now be"));
    assertThat(Fixing.fix(linter, "example.yaml", after, FixKind.PROPOSED))
        .contains("stale-response-seen: [Seedling North]");
  }

  /** A unit that is gone is not misspelt, however much its name is like that of another. */
  @Test
  void whatIsGoneIsNotSpeltLikeAnother() throws IOException {
    String before =
        BEFORE.replace("Hardening Bay", "Mist House").replace("Seedling North", "Mint House");
    String after =
        before
            .replaceFirst("(?s)  - unit: Mint House.*?(?=  - unit: Mist House)", "")
            .replace(
                "zones: [Propagation, Mint House, Mist House]", "zones: [Propagation, Mint House]");
    SiteLinter linter = since(before);
    assertThat(stale(linter, after)).noneMatch(line -> line.contains("write \"Mist House\""));
    assertThat(Fixing.fix(linter, "example.yaml", after, FixKind.PROPOSED))
        .contains("Mint House, ", "stale-response-seen: [Mint House]");
  }

  /**
   * What was seen at one unit proves nothing of another, so that no spelling in a record is safe.
   */
  @Test
  void aSpellingInARecordIsProposedOnly() throws IOException {
    String after =
        BEFORE.replace(
            "stale-response-seen: [Seedling North]", "stale-response-seen: [Seedling Nort]");
    SiteLinter linter = SiteLinter.builder().build();
    assertThat(Fixing.fix(linter, "example.yaml", after, FixKind.SAFE)).isEqualTo(after);
    assertThat(Fixing.fix(linter, "example.yaml", after, FixKind.PROPOSED)).isEqualTo(BEFORE);
  }
}
