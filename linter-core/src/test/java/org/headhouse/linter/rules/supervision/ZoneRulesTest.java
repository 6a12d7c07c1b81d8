package org.headhouse.linter.rules.supervision;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The zones of the software are the units of the chain: common practice, no source. */
class ZoneRulesTest {
  private static final String SITE =
      new SiteText().unit("120 ohm", "10 m").unit("none", "10 m").unit("120 ohm", "").toString();

  private static LineCheck of(String link, String zones) {
    return LineCheck.of(SITE + "supervision: {link: " + link + ", zones: [" + zones + "]}\n");
  }

  private static List<String> reported(LineCheck check) {
    return check.results().stream()
        .map(
            result ->
                result.rule().replace("supervision.", "")
                    + ": "
                    + result.message().fact()
                    + "; "
                    + result.message().remedy())
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Head House, Bay 2, Bay 3        |",
        "Bay 3, Head House, Bay 2        |",
        "Head House, Bay 2               | zone-missing: the zone list lacks \"Bay 3\"; add \"Bay 3\"",
        "Head House, Bay 2, Bay 3, Bay 2 | zone-duplicate: the zone \"Bay 2\" is listed twice; delete one of the two",
        "Head House, Bay 2, Bay 3, Store | zone-unknown: zone \"Store\" is not a unit of the chain; remove it, or add the unit to the chain",
        // The unit that it is spelt like is a zone already.
        "Head House, Bay 2, Bay 3, Bay 33 | zone-unknown: zone \"Bay 33\" is not a unit of the chain; remove it, or add the unit to the chain",
        // A zone that is misspelt is not missing as well.
        "Haed House, Bay 2, Bay 3        | zone-unknown: zone \"Haed House\" is not a unit of the chain; write \"Head House\"",
      })
  void oneMistakeIsReportedOnce(String zones, String reported) {
    assertThat(reported(of("serial", zones)))
        .containsExactlyElementsOf(reported == null ? List.of() : List.of(reported));
  }

  /** Its name is mended first; the zone is right. */
  @Test
  void noZoneIsSpeltLikeAUnitThatCannotBeRead() {
    String zones = "supervision: {link: serial, zones: [Head House, Bay 2, Bay 3]}\n";
    LineCheck check =
        LineCheck.of(SITE.replace("unit: Bay 2\n", "unit: \"Bay\\u200b 2\"\n") + zones);
    assertThat(check.rules()).containsExactly("name.unreadable");
  }

  @Test
  void eachUnitThatIsMissingIsNamed() {
    LineCheck check = of("serial", "Bay 2");
    assertThat(reported(check))
        .containsExactly(
            "zone-missing: the zone list lacks \"Head House\", \"Bay 3\"; add them in the order of the"
                + " chain");
    assertThat(check.results())
        .flatExtracting(Result::identities)
        .extracting(Identity::unit)
        .containsExactly("Head House", "Bay 3");
  }

  /** An item that is not understood may be any unit, and a name that is not known any zone. */
  @Test
  void whatIsNotUnderstoodIsNotMissing() {
    assertThat(of("serial", "Head House, Bay 2, 5").rules())
        .isNotEmpty()
        .doesNotContain("supervision.zone-missing");
    assertThat(of("serial", "Head House, Bay 2, Bay 3").with("unit: Bay 3", "unit: 3").rules())
        .isNotEmpty()
        .doesNotContain("supervision.zone-unknown");
  }

  /** Over Ethernet each zone needs an address; the same zone twice is reported as such. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "serial   | Head House, Bay 2, Bay 3        |",
        "ethernet | Head House, Bay 2, Bay 3        | Bay 2, Bay 3",
        "ethernet | Head House, Bay 2, Bay 3, Bay 3 | Bay 2, Bay 3",
        "ethernet | Head House, Bay 2, Nowhere      | Bay 2",
      })
  void polledOverEthernet(String link, String zones, String unreachable) {
    LineCheck check =
        of(link, zones).with("address: 1\n", "address: 1\n    network: {ip: 10.0.0.1/24}\n");
    List<Result> reported =
        check.results().stream()
            .filter(result -> result.rule().equals("supervision.unreachable"))
            .toList();
    assertThat(reported)
        .extracting(Result::unit)
        .containsExactlyElementsOf(
            unreachable == null ? List.of() : List.of(unreachable.split(", ", -1)));
    assertThat(reported)
        .allSatisfy(
            one ->
                assertThat(one.message().remedy())
                    .isEqualTo(
                        "add network with its ip to \""
                            + one.unit()
                            + "\", or poll through the head unit or over the serial line"));
  }

  /** The last line of a file may have no end. */
  @Test
  void aZoneTwiceInTheLastLineIsDeleted() {
    LineCheck check =
        LineCheck.of(
            SITE
                + "supervision:\n  link: serial\n  zones:\n    - Head House\n    - Bay 2\n    - Bay 3"
                + "\n    - Bay 2");
    assertThat(check.rules()).contains("supervision.zone-duplicate");
    assertThat(check.results())
        .filteredOn(result -> result.rule().equals("supervision.zone-duplicate"))
        .singleElement()
        .extracting(Result::fix)
        .isNotNull();
  }
}
