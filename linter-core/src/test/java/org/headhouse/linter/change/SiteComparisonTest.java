package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.report.ChangeReport;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One edit of a site's text, and what is reported of it. */
class SiteComparisonTest {
  private static final String SITE =
      """
      format: 1
      site: example
      stage: commissioned
      weather-station: {at: Head House, readings: [light, rain]}
      line:
        baud: 9600
        parity: even
        stop-bits: 1
        cable: {gauge: 24 AWG, shielded: true, impedance: 120 ohm}
        bias: [{at: Head House, resistors: 560 ohm, supply: 5 V}]
      chain:
        - unit: Head House
          role: head
          address: 1
          device-type: eight-way
          comm-module: fitted
          conductors: [A, B, G]
          termination: 120 ohm
          outdoor: {light: local, rain: local}
          cable-to-next: 40 m
        - repeater: Boiler
          termination: {in: 120 ohm, out: 120 ohm}
          cable-to-next: 20 m
        - unit: Palms
          role: follower
          address: 2
          device-type: eight-way
          comm-module: fitted
          conductors: [A, B]
          termination: none
          stub: 0.5 m
          outdoor: {light: head, rain: head}
          vents: roof
          on-stale-readings: hold
          cable-to-next: 30 m
        - unit: Cacti
          role: follower
          address: 3
          device-type: eight-way
          comm-module: fitted
          conductors: [A, B]
          termination: 120 ohm
          outdoor: {light: head, rain: none}
      supervision: {link: serial, zones: [Head House, Palms, Cacti]}
      commissioning: {date: 2026-03-14, by: R.O., outdoor-readings-seen: [Palms, Cacti]}
      suppressions:
        - {rule: address.gap, unit: Palms, justification: Known.}
      """;

  private static List<String> reported(String old, String edited) {
    assertThat(SITE).contains(old);
    int at = SITE.indexOf(old);
    Site after = States.site(SITE.substring(0, at) + edited + SITE.substring(at + old.length()));
    return ChangeReport.text(
        "then", List.of(SiteComparison.of(States.site(SITE), after, ExcludedAddresses.NONE)));
  }

  /** The difference as it is reported; what is written otherwise and means the same is none. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit: Palms | unit: Date Palms | \"Date Palms\" was called \"Palms\"",
        "address: 3 | address: 7 | \"Cacti\": address from 3 to 7",
        "cable-to-next: 30 m | cable-to-next: 35 m | \"Palms\": cable-to-next from 30 m to 35 m",
        "cable-to-next: 30 m | cable-to-next: 30.0 m | -",
        "stub: 0.5 m | stub: 1 m | \"Palms\": stub from 0.5 m to 1 m",
        "stub: 0.5 m | pair: crossed | \"Palms\": pair from straight to crossed",
        "stub: 0.5 m | pair: straight | \"Palms\": stub from 0.5 m to nothing",
        "conductors: [A, B, G] | conductors: [G, B, A] | -",
        "conductors: [A, B, G] | conductors: [A, B] | \"Head House\": conductors from [A, B, G] to [A, B]",
        "termination: none | termination: 120 ohm | \"Palms\": termination from none to 120 ohm",
        "in: 120 ohm | in: 0.12 kohm | -",
        "in: 120 ohm | in: 150 ohm | \"Boiler\": termination in from 120 ohm to 150 ohm",
        "rain: none | rain: head | \"Cacti\": rain from none to head",
        "resistors: 560 ohm | resistors: 470 ohm | \"Head House\": bias from 560 ohm at 5 V to 470 ohm at 5 V",
        "bias: [{at: Head House | bias: [{at: Palms | \"Palms\": bias from nothing to 560 ohm at 5 V",
        "repeater: Boiler | repeater: Boiler House | \"Boiler House\" was called \"Boiler\"",
        "baud: 9600 | baud: 19200 | the line: baud from 9600 to 19200",
        "shielded: true | shielded: false | the line: cable.shielded from true to false",
        "stage: commissioned | stage: planned | the site: stage from commissioned to planned",
        "on-stale-readings: hold | on-stale-readings: close | \"Palms\": on-stale-readings from hold to close",
        "at: Head House, readings | at: Palms, readings | the site: weather-station.at from Head House to Palms",
      })
  void oneEditIsOneDifference(String old, String edited, String difference) {
    List<String> reported = reported(old, edited);
    if (difference.equals("-")) {
      assertThat(reported).contains("    Nothing that is read of the site differs.");
    } else {
      assertThat(reported).contains("    - " + difference);
    }
  }

  /** What is done on the site. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit: Palms | unit: Date Palms | 1. At \"Date Palms\" set name from Palms to Date Palms.",
        "rain: none | rain: head | 1. At \"Cacti\" set rain from none to head.",
        "baud: 9600 | baud: 19200 | 2. At all units set baud from 9600 to 19200, in one go, the head unit last: \"Palms\", \"Cacti\", \"Head House\". Restart each. Set the software's port and any repeater with a switch for the rate alike. Without readings meanwhile: \"Head House\", \"Palms\", \"Cacti\".",
        "in: 120 ohm | in: 150 ohm | - \"Boiler\": exchange the terminator of 120 ohm for 150 ohm on the side towards the head unit",
        "bias: [{at: Head House | bias: [{at: Palms | 1. Isolate the supply of \"Head House\", \"Boiler\", \"Palms\", \"Cacti\", lock it off, and work in one go. Then restore the supply. Without readings meanwhile: \"Head House\", \"Palms\", \"Cacti\".",
        "stub: 0.5 m | pair: crossed | - \"Palms\": pair from straight to crossed; stub from 0.5 m to nothing",
        "cable-to-next: 30 m | cable-to-next: 35 m | - \"Palms\": where the cable to \"Cacti\" is really another, exchange it: cable-to-next from 30 m to 35 m",
        "cable-to-next: 30 m | cable-to-next: 35 m | - \"Cacti\": where the cable from \"Palms\" is really another, exchange it: cable-to-next from 30 m to 35 m",
        "cable-to-next: 30 m | cable-to-next: 35 m | 1. Isolate the supply of \"Boiler\", \"Palms\", \"Cacti\", lock it off, and work in one go. Then restore the supply. Without readings meanwhile: \"Palms\", \"Cacti\".",
        "stub: 0.5 m | surge-protection-to-next: fitted | - \"Palms\": fit a surge protector at this end of the run to \"Cacti\"; stub from 0.5 m to nothing",
        "stub: 0.5 m | surge-protection-to-next: fitted | - \"Cacti\": fit a surge protector at this end of the run from \"Palms\"",
        "at: Head House, readings | at: Palms, readings | - \"Palms\": wire the weather station to it",
        "stage: commissioned | stage: planned | There is nothing to do on the line.",
        "address: 3 | address: 2 | None can be given: in the later state address 2 is used twice: check and correct it first.",
        "unit: Cacti | unit: Palms | None can be given: in the later state the name \"Palms\" is used twice: check and correct it first.",
      })
  void theWorkIsReported(String old, String edited, String step) {
    assertThat(reported(old, edited)).anyMatch(line -> line.strip().equals(step));
  }

  /** What else is touched. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit: Palms | unit: Date Palms | Correct labels and drawings of \"Date Palms\".",
        "unit: Palms | unit: Date Palms | Write unit: Date Palms in the suppression of address.gap, which still names \"Palms\".",
        "rain: none | rain: head | Prove again what the change touches, and add it to renewed in the record of commissioning: the outdoor readings, the storm response and the response to stale readings at \"Cacti\".",
        "baud: 9600 | baud: 19200 | Prove the whole line again and renew the record of commissioning: measure the line, see the outdoor readings at every follower's display and the responses of all vents, and enter date and name.",
      })
  void whatElseIsTouchedIsReported(String old, String edited, String consequence) {
    assertThat(reported(old, edited)).contains("    - " + consequence);
  }

  /** Roles change in one step with the station: never two head units, and only briefly none. */
  @ParameterizedTest
  @CsvSource({"Head House, Palms"})
  void theOldHeadUnitIsSetFirst(String old, String now) {
    String edited =
        SITE.replace("unit: " + old, "unit: @")
            .replace("unit: " + now, "unit: " + old)
            .replace("unit: @", "unit: " + now);
    List<String> reported =
        ChangeReport.text(
            "then",
            List.of(
                SiteComparison.of(States.site(SITE), States.site(edited), ExcludedAddresses.NONE)));
    String step = reported.get(indexOf(reported, "Isolate the supply of"));
    assertThat(step)
        .containsSubsequence(
            "First, with the supply on, at \"" + old + "\" set role from head to follower",
            "Isolate the supply of",
            "Then at \"" + now + "\" set role from follower to head");
  }

  private static int indexOf(List<String> lines, String text) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).contains(text)) {
        return i;
      }
    }
    return -1;
  }
}
