package org.headhouse.linter.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a change touches besides the line. */
class ConsequenceFinderTest {
  private static final String SITE =
      """
      format: 1
      site: example
      stage: planned
      line: {baud: 9600, parity: even, stop-bits: 1}
      chain:
        - {unit: Head House, role: head, address: 1}
        - {repeater: Boiler}
        - {unit: Palms, role: follower, address: 2}
        - {unit: Cacti, role: follower, address: 3}
      supervision: {link: serial, zones: [Palms, Cacti]}
      suppressions:
        - {rule: address.gap, unit: Palms, justification: Known.}
        - {rule: address.order, justification: Known.}
      """;

  private static final String FERNS = "  - {unit: Ferns, role: follower, address: 4}\n";

  private static List<String> reported(String before, String after) {
    return all(before, after).stream()
        .filter(one -> !one.startsWith("labels: label these cables"))
        .toList();
  }

  private static List<String> all(String before, String after) {
    Site was = States.site(before);
    Site will = States.site(after);
    return ConsequenceFinder.of(was, will, SiteDifferences.between(was, will), true).stream()
        .map(one -> one.kind().word() + ": " + one.text())
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "title: x           | title: y             |",
        "link: serial       | link: through-head   | supervision: with the software stopped, take it off the pair; then let it ask the head unit alone; both ways must never ask at once; at each zone, read the name of the unit back before the software may write",
        "link: serial       | 'link: serial, at: Office' | supervision: with the software stopped, take it off the pair; then attach it to the pair at \"Office\" and set its port to baud 9600, parity even, stop-bits 1; both ways must never ask at once; at each zone, read the name of the unit back before the software may write",
        "link: serial       | 'link: serial, polling: {timeout: 2 s}' | supervision: set the polling of the software: timeout to 2 s",
        "zones: [Palms, Cacti] | zones: [Palms, Head House] | supervision: add the zone \"Head House\" at address 1; supervision: delete the zone \"Cacti\": nobody sees its alarms any more",
        "baud: 9600         | baud: 19200          | ",
        "parity: even       | parity: odd          | ",
        "stop-bits: 1       | stop-bits: 2         | ",
        "unit: Cacti        | unit: Agaves         | labels: correct labels and drawings of \"Agaves\"",
        "address: 3         | address: 5           | labels: correct labels and drawings of \"Cacti\"",
        // A repeater is no zone, but it has a label.
        "repeater: Boiler   | repeater: East       | labels: correct labels and drawings of \"East\"",
        "'{unit: Palms, '   | '{unit: Ferns, '     | labels: correct labels and drawings of \"Ferns\"; suppression: write unit: Ferns in the suppression of address.gap, which still names \"Palms\"",
      })
  void oneEdit(String text, String other, String expected) {
    assertThat(reported(SITE, SITE.replace(text, other)))
        .containsExactlyElementsOf(
            expected == null ? List.of() : List.of(expected.split("; (?=[a-z]+: )", -1)));
  }

  /** A label has the names at both ends of its cable, its number and its length. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "unit: Palms | unit: Ferns | label these cables anew at both ends: \"Boiler\" to \"Ferns\", \"Ferns\" to \"Cacti\"",
        "'  - {repeater: Boiler}\n' | '' | label these cables anew at both ends, and correct the drawings of the wiring: \"Head House\" to \"Palms\"; other cables get another number, so print their labels too",
        "address: 2} | 'address: 2, stub: 2 m}' | label these cables anew at both ends, and correct the drawings of the wiring: \"Boiler\" to the tap of \"Palms\", the tap of \"Palms\" to \"Palms\", the tap of \"Palms\" to \"Cacti\"",
        "address: 2} | 'address: 2, cable-to-next: 50 m}' | label these cables anew at both ends, and correct the drawings of the wiring: \"Palms\" to \"Cacti\"",
        "baud: 9600 | baud: 19200 |",
      })
  void cablesAreLabelled(String text, String other, String expected) {
    assertThat(
            all(SITE, SITE.replace(text.replace("\\n", "\n"), other)).stream()
                .filter(one -> one.startsWith("labels: label these cables")))
        .containsExactlyElementsOf(expected == null ? List.of() : List.of("labels: " + expected));
  }

  /** One that is moved keeps its own label, and its cables get others. */
  @Test
  void aMovedUnitHasOtherCables() {
    String palms = "  - {unit: Palms, role: follower, address: 2}\n";
    String cacti = "  - {unit: Cacti, role: follower, address: 3}\n";
    assertThat(all(SITE, SITE.replace(palms + cacti, cacti + palms)))
        .containsExactly(
            "labels: label these cables anew at both ends, and correct the drawings of the wiring:"
                + " \"Boiler\" to \"Cacti\", \"Cacti\" to \"Palms\"");
  }

  /** The work at the software is named where nothing is to be done on the line. */
  @Test
  void anotherLinkOfTheSoftwareIsWork() {
    String before = SITE.replace("link: serial", "link: through-head");
    String after = SITE.replace("link: serial", "link: serial, at: Office");
    assertThat(reported(before, after))
        .singleElement()
        .asString()
        .contains(
            "end all that the head unit asks and writes for it; then attach it to the pair at"
                + " \"Office\" and set its port to baud 9600, parity even, stop-bits 1");
    FieldWork work =
        SiteComparison.of(States.site(before), States.site(after), ExcludedAddresses.NONE).work();
    assertThat(((FieldWork.Plan) work).remarks())
        .singleElement()
        .asString()
        .startsWith("There is nothing to do at the units; what is to be done at the software");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'  - {unit: Cacti, role: follower, address: 3}' | labels: correct labels and drawings of \"Cacti\"",
        "'  - {unit: Palms, role: follower, address: 2}' | labels: correct labels and drawings of \"Palms\"; suppression: delete the suppression of address.gap at \"Palms\", which is gone",
        "'  - {repeater: Boiler}'                        | labels: correct labels and drawings of \"Boiler\"",
      })
  void anItemLess(String item, String expected) {
    assertThat(reported(SITE, SITE.replace(item + "\n", "")))
        .containsExactly(expected.split("; ", -1));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'  - {unit: Ferns, role: follower, address: 4}' | labels: correct labels and drawings of \"Ferns\"",
        "'  - {unit: Ferns, role: follower}'             | labels: correct labels and drawings of \"Ferns\"",
        "'  - {repeater: Gate}'                          | labels: correct labels and drawings of \"Gate\"",
      })
  void anItemMore(String item, String expected) {
    assertThat(reported(SITE, SITE.replace("supervision:", item + "\nsupervision:")))
        .containsExactly(expected.split("; ", -1));
  }

  /** Where nobody polls there are no zones; where one of the states has them, there are. */
  @ParameterizedTest
  @CsvSource({"true, true, 1", "true, false, 2", "false, true, 2", "false, false, 1"})
  void zonesAreThoseOfASupervision(boolean was, boolean will, int consequences) {
    String before = was ? SITE : SITE.replace("supervision:", "overview:");
    String after = SITE.replace("supervision:", (FERNS + "supervision:"));
    assertThat(reported(before, will ? after : after.replace("supervision:", "overview:")))
        .hasSize(consequences);
  }

  /** A type that is another makes the unit another; the name, and what is accepted, stay. */
  @ParameterizedTest
  @CsvSource({"Palms, 0", "Ferns, 1"})
  void whatIsAcceptedAtAUnitThatIsExchanged(String name, int deleted) {
    String typed = SITE.replace("{unit: Palms", "{device-type: old, unit: Palms");
    String exchanged = SITE.replace("{unit: Palms", "{device-type: new, unit: " + name);
    assertThat(
            reported(typed, exchanged).stream()
                .filter(one -> one.startsWith("suppression: delete")))
        .hasSize(deleted);
  }

  /** A live line is proved again after a change of wiring, addresses, sources or line settings. */
  @ParameterizedTest
  @CsvSource({
    "commissioned, address: 3, address: 5, true",
    "planned, address: 3, address: 5, false",
    "commissioned, unit: Cacti, unit: Agaves, false",
  })
  void theRecordIsRenewed(String stage, String text, String other, boolean renewed) {
    String before = SITE.replace("stage: planned", "stage: " + stage);
    assertThat(reported(before, before.replace(text, other)).stream())
        .anyMatch(one -> one.startsWith("record: prove ") || !renewed)
        .noneMatch(one -> one.startsWith("record: ") && !renewed);
  }

  /** So is one that is planned again for a change, and keeps the record of its visit. */
  @Test
  void theRecordOfALineThatIsPlannedAgainIsRenewed() {
    String before = SITE + "commissioning: {date: 2026-03-14, by: R.O.}\n";
    assertThat(reported(before, before.replace("address: 3", "address: 5")))
        .anyMatch(one -> one.startsWith("record: prove "));
  }
}
