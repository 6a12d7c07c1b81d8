package org.headhouse.linter.rules.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** After a change, what it touches is proved again: common practice, no source. */
class RenewedRecordTest {
  private static final String SITE =
      """
      format: 1
      site: example
      stage: commissioned
      weather-station: {at: Head House, readings: [light], averaging: 10 s}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
        bias: [{at: Head House, resistors: 560 ohm, supply: 5 V}]
        traffic: {broadcast: {registers: 12, every: 5 s}}
      chain:
        - {unit: Head House, role: head, address: 1, serial-number: S-1, firmware: "1", termination: 120 ohm, vents: none, outdoor: {light: local}, cable-to-next: 10 m}
        - {unit: Ferns, role: follower, address: 2, termination: none, vents: none, outdoor: {light: head}, cable-to-next: 10 m}
        - {unit: Palms, role: follower, address: 3, device-type: eight-way, serial-number: S-3, firmware: "1", termination: none, vents: roof, on-stale-readings: close, stale-after: 1 min, close-time: 90 s, outdoor: {light: head}, cable-to-next: 10 m}
        - {unit: Cacti, role: follower, address: 4, termination: 120 ohm, vents: roof, on-stale-readings: close, outdoor: {light: head}, cable-to-next: 10 m}
        - {repeater: Road, termination: {in: none, out: 120 ohm}, cable-to-next: 10 m}
        - {unit: Roses, role: follower, address: 5, termination: 120 ohm, vents: none, outdoor: {light: head}}
      supervision: {link: serial, zones: [Palms], polling: {every: 20 s, registers: 60, timeout: 1 s}}
      commissioning:
        date: 2026-03-14
        by: R.O.
        measured: {pair-resistance: 60 ohm, idle-voltage: 0.25 V}
        outdoor-readings-seen: [Ferns, Palms, Cacti, Roses]
        storm-response-seen: [Palms, Cacti]
        stale-response-seen: [Palms, Cacti]
      """;

  private static final String PALMS_RESPONSES =
      "storm-response-seen: [Palms], stale-response-seen: [Palms]";
  private static final String PALMS = "outdoor-readings-seen: [Palms], " + PALMS_RESPONSES;
  private static final String HEAD = ", measured: {pair-resistance: 61 ohm, idle-voltage: 0.24 V}";
  private static final String ALL =
      "outdoor-readings-seen: [Ferns, Palms, Cacti, Roses], storm-response-seen: [Palms, Cacti],"
          + " stale-response-seen: [Palms, Cacti], measured: {pair-resistance: 61 ohm, idle-voltage:"
          + " 0.24 V, elsewhere: [{at: Road, side: in, pair-resistance: 61 ohm, idle-voltage: 0.23 V},"
          + " {at: Road, pair-resistance: 61 ohm}, {at: Roses, pair-resistance: 61 ohm}]}";

  private static String renewed(String site, String date, String contents) {
    return site + "  renewed: [{date: " + date + ", by: R.O., " + contents + "}]\n";
  }

  private static List<String> reported(String rule, String before, String after)
      throws IOException {
    return messages(rule, before, after).stream().map(Message::fact).toList();
  }

  private static List<Message> messages(String rule, String before, String after)
      throws IOException {
    SiteState state = SiteState.of(Stream.of(SiteInput.text("example.yaml", before)), null);
    return SiteLinter.builder()
        .before(state)
        .build()
        .checkText("example.yaml", after)
        .results()
        .stream()
        .filter(result -> result.rule().equals(rule))
        .map(Result::message)
        .toList();
  }

  private static List<String> kept(String after) throws IOException {
    return reported("change.record-kept", SITE, after);
  }

  private static String edited(String text, String other) {
    assertThat(SITE).contains(text);
    return SITE.replace(text, other);
  }

  /** Each change without a renewal, and what a renewal has to prove of it. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "serial-number: S-3     | serial-number: S-9       | PALMS HEAD",
        "device-type: eight-way | device-type: sixteen-way | PALMS HEAD",
        "address: 3             | address: 9               | PALMS",
        "'S-3, firmware: \"1\"' | 'S-3, firmware: \"2\"'   | PALMS",
        "close-time: 90 s       | close-time: 100 s        | RESPONSES",
        "stale-after: 1 min     | stale-after: 2 min       | RESPONSES",
        "vents: roof, on-stale-readings: close, stale | vents: side, on-stale-readings: close, stale | RESPONSES",
        "on-stale-readings: close, stale | on-stale-readings: close-and-alarm, stale | RESPONSES",
        "every: 20 s            | every: 10 s              | SEEN",
        "registers: 60          | registers: 90            | SEEN",
        "baud: 9600             | baud: 19200              | ALL",
        "every: 5 s             | every: 9 s               | ALL",
        "registers: 12          | registers: 14            | ALL",
        "averaging: 10 s        | averaging: 1 min         | ALL",
        "readings: [light]      | readings: [light, rain]  | ALL",
        "serial-number: S-1     | serial-number: S-9       | ALL",
        "'S-1, firmware: \"1\"' | 'S-1, firmware: \"2\"'   | ALL",
        "gauge: 24 AWG          | gauge: 22 AWG            | ALL",
      })
  void whatAChangeTouchesIsProvedAgain(String text, String other, String due) throws IOException {
    String after = edited(text, other);
    assertThat(kept(after))
        .containsExactly("the line has changed, but its record is still that of 2026-03-14");
    String contents =
        switch (due) {
          case "PALMS HEAD" -> PALMS + HEAD;
          case "PALMS" -> PALMS;
          case "RESPONSES" -> PALMS_RESPONSES;
          case "SEEN" -> "outdoor-readings-seen: [Ferns, Palms, Cacti, Roses]";
          default -> ALL;
        };
    assertThat(kept(renewed(after, "2026-06-20", contents))).isEmpty();
    // One name or value less is not enough.
    String less =
        contents.contains(", idle-voltage: 0.24 V")
            ? contents.replace(", idle-voltage: 0.24 V", "")
            : contents.replaceFirst("Palms(, )?", "");
    assertThat(kept(renewed(after, "2026-06-20", less))).hasSize(1);
    assertThat(kept(renewed(after, "2026-06-20", "reason: changed"))).hasSize(1);
  }

  /**
   * The segment behind a repeater is measured at that repeater: the head unit sees nothing of it.
   */
  @ParameterizedTest
  @CsvSource({
    "'measured: {elsewhere: [{at: Road, pair-resistance: 61 ohm}]}', 0",
    "'measured: {pair-resistance: 61 ohm, idle-voltage: 0.24 V}', 1"
  })
  void theSegmentThatIsTouchedIsMeasured(String measured, int results) throws IOException {
    String before = SITE.replace("address: 5,", "address: 5, serial-number: S-5,");
    String after =
        renewed(
            before.replace("S-5", "S-6"),
            "2026-06-20",
            "outdoor-readings-seen: [Roses], " + measured);
    assertThat(reported("change.record-kept", before, after)).hasSize(results);
  }

  private static final String NEW_UNIT =
      "  - {unit: Moss, role: follower, address: 6, termination: none, vents: none, outdoor: {light:"
          + " head}, cable-to-next: 10 m}\n";

  /** A new unit has two neighbours, which were opened for it. */
  @ParameterizedTest
  @CsvSource({
    "'Moss, Ferns, Palms', 0",
    "'Moss, Ferns', 1",
    "'Moss, Palms', 1",
    "'Ferns, Palms', 1",
  })
  void aNewUnitHasTwoNeighbours(String seen, int results) throws IOException {
    String after = SITE.replace("  - {unit: Palms", NEW_UNIT + "  - {unit: Palms");
    String contents = "outdoor-readings-seen: [" + seen + "], " + PALMS_RESPONSES + HEAD;
    assertThat(kept(renewed(after, "2026-06-20", contents))).hasSize(results);
  }

  /** Another device under an old name is exchanged; its neighbours are as they were. */
  @Test
  void anExchangeTouchesNoNeighbour() throws IOException {
    String after = edited("device-type: eight-way", "device-type: sixteen-way");
    assertThat(kept(renewed(after, "2026-06-20", PALMS + HEAD))).isEmpty();
  }

  @Test
  void whatIsMissingIsNamed() throws IOException {
    String after = edited("serial-number: S-3", "serial-number: S-9");
    String renewed = renewed(after, "2026-06-20", "outdoor-readings-seen: [Palms]");
    assertThat(kept(renewed))
        .containsExactly("the record is renewed after a change without 4 proofs at 2 items");
    assertThat(messages("change.record-kept", SITE, renewed))
        .extracting(Message::remedy)
        .containsExactly(
            "prove the storm response and the response to stale readings at \"Palms\"; the pair"
                + " resistance and the idle voltage at \"Head House\" too, and then add it to this"
                + " entry; until then set stage: planned");
    String one = renewed(after, "2026-06-20", PALMS + ", measured: {pair-resistance: 61 ohm}");
    assertThat(kept(one))
        .containsExactly(
            "the record is renewed after a change without the idle voltage at \"Head House\"");
  }

  /** An entry of an earlier day, or one that was there before, renews nothing. */
  @Test
  void anOldEntryRenewsNothing() throws IOException {
    String before = renewed(SITE, "2026-06-20", PALMS + HEAD);
    String after = before.replace("serial-number: S-3", "serial-number: S-9");
    assertThat(reported("change.record-kept", before, after))
        .containsExactly("the line has changed, but its record is still that of 2026-06-20");
    String again =
        after.replace(
            "renewed: [", "renewed: [{date: 2026-06-20, by: R.O., " + PALMS + HEAD + "}, ");
    assertThat(reported("change.record-kept", before, again)).isEmpty();
    String early = renewed(edited("serial-number: S-3", "serial-number: S-9"), "2026-01-02", PALMS);
    assertThat(kept(early)).isEmpty();
    assertThat(reported("commissioning.date", SITE, early)).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.25 V}  | 0.25 V}  | 1",
        "0.25 V}  | 250 mV}  | 1",
        "[Palms, Cacti] | [Cacti, Palms] | 1",
        "0.25 V}  | 0.26 V}  | 0",
        "storm-response-seen: [Palms, | storm-response-seen: [{unit: Palms, limit: 12 m/s, closed-in: 85 s}, | 0",
        "2026-06-20 | 2026-03-14 | 0",
        "2026-06-20 | 2026-01-02 | 0",
      })
  void aLaterRecordHasReadingsOfItsOwn(String text, String other, int results) throws IOException {
    String after = SITE.replace("2026-03-14", "2026-06-20").replace(text, other);
    assertThat(reported("commissioning.same-readings", SITE, after)).hasSize(results);
  }

  /** A renewal that copies an earlier one, or the first record, is no visit either. */
  @Test
  void aRenewalHasReadingsOfItsOwn() throws IOException {
    String first = PALMS + HEAD;
    String before = renewed(SITE, "2026-06-20", first);
    String copied = before.replace("}]\n", "}, {date: 2026-09-20, by: R.O., " + first + "}]\n");
    assertThat(reported("commissioning.same-readings", before, copied)).hasSize(1);
    assertThat(
            reported(
                "commissioning.same-readings",
                before,
                copied.replace(
                    "{date: 2026-09-20, by: R.O., " + first,
                    "{date: 2026-09-20, by: R.O., " + PALMS)))
        .isEmpty();
  }
}
