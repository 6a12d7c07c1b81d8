package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The meter is held to the head unit and to the ends of every segment: common practice, no source.
 */
class CommissioningUnmeasuredTest {
  private static final String RULE = "commissioning.unmeasured";
  private static final String BOTH = "pair-resistance: 60 ohm, idle-voltage: 0.25 V";

  /** As it is without a policy file: {@link LineCheck} itself leaves the rule out. */
  private static final String POLICY = "format: 1\nrule-set: 1\n";

  /** Two segments, of which the second alone has a bias. */
  private static LineCheck site(String measured, String terminators) {
    String text =
        new SiteText()
            .bias("Boiler", "560 ohm", "5 V")
            .unit(terminators, "10 m")
            .unit("none", "10 m")
            .repeater("Boiler", "120 ohm", "10 m")
            .unit("120 ohm", "")
            .measured(measured)
            .toString();
    return new LineCheck(text, LineCheck.of("").deviceTypes(), POLICY);
  }

  private static List<String> lacking(LineCheck check) {
    return check.reportedBy(RULE).stream()
        .map(
            line ->
                line.replaceFirst(".* the record lacks \\d+ proofs .*; measure (.*), and .*", "$1"))
        .map(
            line ->
                line.replaceFirst(
                    ".* the record lacks (.*?): a missing, wrong or extra terminator .*", "$1"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "elsewhere: []             | the pair resistance at \"Head House\", \"Boiler\", side in, \"Boiler\", side out, \"Bay 3\"; the idle voltage at \"Boiler\", side out, \"Bay 3\"",
        "pair-resistance: 60 ohm   | the pair resistance at \"Boiler\", side in, \"Boiler\", side out, \"Bay 3\"; the idle voltage at \"Boiler\", side out, \"Bay 3\"",
        "pair-resistance: 60 ohm, elsewhere: [{at: Boiler, side: in, pair-resistance: 60 ohm}, {at: Boiler, BOTH}] | the pair resistance and the idle voltage at \"Bay 3\"",
        "pair-resistance: 60 ohm, elsewhere: [{at: Boiler, side: in, pair-resistance: 60 ohm}, {at: Boiler, side: out, BOTH}, {at: Bay 3, idle-voltage: 0.25 V}] | the pair resistance at \"Bay 3\"",
        "pair-resistance: 60 ohm, elsewhere: [{at: Boiler, side: in, pair-resistance: 60 ohm}, {at: Boiler, side: out, BOTH}, {at: Bay 3, BOTH}] |",
        // The head unit is one of the places, wherever it is written.
        "elsewhere: [{at: Head House, pair-resistance: 60 ohm}, {at: Boiler, side: in, pair-resistance: 60 ohm}, {at: Boiler, BOTH}, {at: Bay 3, BOTH}] |",
        // A value that is no value is reported as such.
        "pair-resistance: 60, elsewhere: [{at: Boiler, side: in, pair-resistance: 60 ohm}, {at: Boiler, BOTH}, {at: Bay 3, BOTH}] |",
      })
  void everyPlaceIsMeasured(String measured, String lacking) {
    assertThat(lacking(site(measured.replace("BOTH", BOTH), "120 ohm")))
        .isEqualTo(lacking == null ? List.of() : List.of(lacking));
  }

  /** An ohmmeter sees nothing of a terminator with a capacitor. */
  @Test
  void whatDoesNotConductNeedsNoResistance() {
    LineCheck check =
        site("elsewhere: []", "120 ohm + 1 nF").with("in: 120 ohm", "in: 120 ohm + 1 nF");
    assertThat(lacking(check))
        .containsExactly(
            "the pair resistance and the idle voltage at \"Boiler\", side out, \"Bay 3\"");
  }

  @Test
  void whatIsMeasuredLaterCounts() {
    LineCheck check =
        site("pair-resistance: 60 ohm", "120 ohm")
            .with(
                "outdoor-readings-seen: [Bay 2, Bay 3]}",
                "outdoor-readings-seen: [Bay 2, Bay 3], renewed: [{date: 2020-06-01, by: R.O.,"
                    + " measured: {elsewhere: [{at: Boiler, side: in, pair-resistance: 60 ohm}, {at:"
                    + " Boiler, "
                    + BOTH
                    + "}, {at: Bay 3, "
                    + BOTH
                    + "}]}}]}");
    assertThat(lacking(check)).isEmpty();
  }

  @Test
  void theRemedySaysWhereToWriteIt() {
    assertThat(site("elsewhere: []", "120 ohm").reportedBy(RULE))
        .singleElement()
        .asString()
        .endsWith(
            ", and then enter that of the head unit under measured, the rest under"
                + " measured.elsewhere with at: Boiler, side: in; at: Boiler, side: out; at: Bay 3"
                + " ["
                + RULE
                + "]");
  }

  /** A converter before the head unit, and nothing after it: the other end has a terminator too. */
  @Test
  void theEndAwayFromTheHeadUnitIsMeasuredWhereverItIs() {
    String text =
        """
            format: 1
            site: ashby
            stage: commissioned
            line: {baud: 9600, parity: even, stop-bits: 1, cable: {gauge: 24 AWG, impedance: 120 ohm}}
            chain:
              - {converter: Office, termination: 120 ohm, cable-to-next: 40 m}
              - {unit: Head House, role: head, address: 1, termination: 120 ohm}
            commissioning: {date: 2020-03-14, by: R.O., measured: {pair-resistance: 60 ohm}}
            """;
    LineCheck check = new LineCheck(text, LineCheck.of("").deviceTypes(), POLICY);
    assertThat(lacking(check)).containsExactly("the pair resistance at \"Office\"");
  }
}
