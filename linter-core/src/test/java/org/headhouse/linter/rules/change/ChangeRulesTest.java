package org.headhouse.linter.rules.change;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** How a line that is live may change: common practice, no source. */
class ChangeRulesTest {
  private static final String SITE =
      new SiteText()
          .unit("120 ohm", "10 m")
          .repeater("Boiler", "120 ohm", "10 m")
          .unit("none", "20 m")
          .unit("120 ohm", "")
          .measured("pair-resistance: 60 ohm")
          .toString();

  private static List<String> reported(String before, String after) throws IOException {
    SiteState state = SiteState.of(Stream.of(SiteInput.text("example.yaml", before)), null);
    return SiteLinter.builder()
        .before(state)
        .build()
        .checkText("example.yaml", after)
        .results()
        .stream()
        .filter(result -> result.rule().startsWith("change."))
        .map(result -> reported(result, after))
        .toList();
  }

  private static String reported(Result result, String text) {
    var region = result.location().region();
    String marked =
        text.lines()
            .toList()
            .get(region.startLine() - 1)
            .substring(region.startColumn() - 1, region.endColumn() - 1);
    return result.rule().substring(7) + " at " + marked + ": " + result.message().fact();
  }

  private static final String KEPT =
      "record-kept at 2020-01-01: the line has changed, but its record is still that of 2020-01-01";

  private static final String REMOVED = "commissioned-removed at ";

  /** An item is taken out, from its first line to its last. */
  private static String without(String item) {
    return SITE.replaceFirst("(?s)  - (unit|repeater): " + item + "\n.*?\n(?=  - |[a-z])", "");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Bay 3      | Bay 2      | the live unit \"Bay 3\" is no longer on the chain",
        "Bay 2      | Boiler     | the live unit \"Bay 2\" is no longer on the chain",
        "Head House | Boiler     | the live unit \"Head House\" is no longer on the chain",
        "Boiler     |            |",
      })
  void aUnitStaysInItsFile(String item, String marked, String fact) throws IOException {
    List<String> reported = reported(SITE, without(item));
    assertThat(reported).contains(KEPT).hasSize(fact == null ? 1 : 2);
    if (fact != null) {
      assertThat(reported).contains(REMOVED + marked + ": " + fact);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "address: 2      | address: 9 | commissioned-readdressed at 9: the live unit \"Bay 2\" changes from address 2 to 9",
        "cable-to-next: 20 m | cable-to-next: 25 m |",
        "baud: 9600      | baud: 19200 |",
        "at: Head House, | at: Bay 2,  |",
        "termination: none | termination: 120 ohm |",
        "light: head     | light: none |",
      })
  void aChangeOfTheLineAsksForANewRecord(String text, String other, String reported)
      throws IOException {
    String after = SITE.replaceFirst(text, other);
    assertThat(reported(SITE, after)).contains(KEPT).hasSize(reported == null ? 1 : 2);
    if (reported != null) {
      assertThat(reported(SITE, after)).contains(reported);
    }
    String renewed = after.replace("date: 2020-01-01", "date: 2020-02-02");
    assertThat(reported(SITE, renewed))
        .containsExactlyElementsOf(reported == null ? List.of() : List.of(reported));
  }

  /**
   * A controller of another type in the place of the old one; at another address both may be wired.
   */
  @ParameterizedTest
  @CsvSource({"2, 1", "9, 2"})
  void anExchangedUnitIsToldOnce(String address, int results) throws IOException {
    String after =
        SITE.replace(
            "address: 2\n    device-type: plain",
            "address: " + address + "\n    device-type: other");
    assertThat(after).isNotEqualTo(SITE);
    assertThat(reported(SITE, after)).contains(KEPT).hasSize(results);
  }

  /** What the line does not depend on may change. */
  @ParameterizedTest
  @CsvSource({
    "site: example, 'site: example\ntitle: Example Nursery'",
    "unit: Bay 2, unit: Palms",
    "by: R.O., by: M.T.",
    "address: 2, 'address: 2\n    network: {ip: 10.0.0.2/24}'",
    "address: 2, 'address: 2\n    serial-number: HH-0042'",
  })
  void otherChangesNeedNone(String text, String other) throws IOException {
    assertThat(reported(SITE, SITE.replaceFirst(text, other))).isEmpty();
  }

  /** A site that never was live is free to change. */
  @ParameterizedTest
  @CsvSource({"planned, commissioned, 0", "commissioned, planned, 1", "planned, planned, 0"})
  void onlyALiveSiteIsHeld(String before, String after, int results) throws IOException {
    String earlier = SITE.replace("stage: commissioned", "stage: " + before);
    if (before.equals("planned")) {
      earlier = earlier.replaceFirst("(?s)\ncommissioning:.*", "\n");
    }
    String later =
        SITE.replace("stage: commissioned", "stage: " + after).replace("address: 2", "address: 9");
    assertThat(reported(earlier, later))
        .hasSize(results)
        .allMatch(reported -> reported.startsWith("commissioned-readdressed"));
    String shorter = without("Bay 3").replace("stage: commissioned", "stage: " + after);
    assertThat(reported(earlier, shorter))
        .hasSize(results)
        .allMatch(reported -> reported.startsWith("commissioned-removed"));
  }

  /** The word planned, with which a change begins, takes no unit off the line. */
  @Test
  void aLineThatIsPlannedForAChangeIsLive() throws IOException {
    String planned = SITE.replace("stage: commissioned", "stage: planned");
    assertThat(reported(planned, planned.replace("address: 2", "address: 9")))
        .containsExactly(
            "commissioned-readdressed at 9: the live unit \"Bay 2\" changes from address 2 to 9");
    assertThat(reported(planned, without("Bay 3").replace("stage: commissioned", "stage: planned")))
        .containsExactly(REMOVED + "Bay 2: the live unit \"Bay 3\" is no longer on the chain");
  }

  /** The change may have been made before the revision that is compared with. */
  @Test
  void aLineThatWasPlannedForAChangeNeedsANewRecord() throws IOException {
    String planned = SITE.replace("stage: commissioned", "stage: planned");
    assertThat(reported(planned, SITE))
        .containsExactly(
            "record-kept at 2020-01-01: the line was planned for a change, but its record is"
                + " still that of 2020-01-01");
    assertThat(reported(planned, SITE.replace("2020-01-01", "2020-02-02"))).isEmpty();
    String renewed =
        SITE.replace(
            "commissioning: {",
            "commissioning: {renewed: [{date: 2020-02-02, by: R.O., reason: changed}], ");
    assertThat(reported(planned, renewed)).isEmpty();
    assertThat(reported(planned, renewed.replace("address: 2", "address: 9")))
        .hasSize(2)
        .anyMatch(one -> one.contains("the record is renewed after a change without"));
  }

  @ParameterizedTest
  @CsvSource({
    "date: 2020-01-01, date: soon, record-kept",
    "commissioning:, proof:, record-kept",
    "chain:, chian:, commissioned-removed",
  })
  void whatIsNotUnderstoodIsNotJudged(String text, String other, String rule) throws IOException {
    assertThat(reported(SITE, SITE.replace("address: 2", "address: 9").replace(text, other)))
        .noneMatch(reported -> reported.startsWith(rule));
  }
}
