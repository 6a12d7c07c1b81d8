package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Somebody saw the vents of every unit shut, twice: common practice, no source. */
class CommissioningResponseUnseenTest {
  private static final String RULE = "commissioning.response-unseen";
  private static final String ROOF = "vents: roof\n    on-stale-readings: close";

  private static LineCheck site(String lists) {
    return LineCheck.of(
            new SiteText()
                .unit("120 ohm", "10 m", ROOF)
                .unit("none", "10 m", "vents: none")
                .unit("120 ohm", "", ROOF)
                .measured("pair-resistance: 60 ohm"))
        .with("outdoor-readings-seen:", lists + " outdoor-readings-seen:");
  }

  private static List<String> lacking(LineCheck check) {
    return check.reportedBy(RULE).stream()
        .map(
            line ->
                line.replaceFirst(".* the record lacks \\d+ proofs .* see (.*), and then .*", "$1"))
        .map(line -> line.replaceFirst(".* the record lacks (.*?): vents that .*", "$1"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "storm-response-seen: [Head House, Bay 3], stale-response-seen: [Head House, Bay 3], | |",
        "storm-response-seen: [{unit: Head House, limit: 12 m/s, closed-in: 85 s}, Bay 3], stale-response-seen: [Bay 3, Head House], | |",
        "storm-response-seen: [Head House], stale-response-seen: [Head House, Bay 3], | the storm response at \"Bay 3\" | [Head House]",
        "storm-response-seen: [Head House, Bay 3], stale-response-seen: [Bay 3], | the response to stale readings at \"Head House\" | [Bay 3]",
        "storm-response-seen: [Head House, Bay 3], | the response to stale readings at \"Head House\", \"Bay 3\" | commissioning",
        "remarks: none, | the storm response and the response to stale readings at \"Head House\", \"Bay 3\" | commissioning",
        // What is misspelt, or not a list at all, is reported as such.
        "storm-response-seen: [Head House, Bay3], stale-response-seen: [Head House, Bay 3], | |",
        "storm-response-seen: all, stale-response-seen: [Head House, Bay 3], | |",
      })
  void everyUnitWithVentsIsSeen(String lists, String lacking, String marked) {
    LineCheck check = site(lists);
    assertThat(lacking(check)).isEqualTo(lacking == null ? List.of() : List.of(lacking));
    if (marked != null) {
      assertThat(check.marked(RULE)).isEqualTo(marked);
    }
  }

  /** To leave vents out of the file is no way round. */
  @Test
  void aUnitThatSaysNothingOfVentsCounts() {
    LineCheck check =
        site("storm-response-seen: [Bay 3], stale-response-seen: [Bay 3],")
            .with("    " + ROOF + "\n", "")
            .with("    vents: none\n", "");
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(
            "at \"Head House\", \"Bay 2\":",
            "check \"Head House\", \"Bay 2\", and set vents: none for each that moves none");
    assertThat(check.with("stage: commissioned", "stage: planned").reportedBy(RULE)).isEmpty();
  }

  /** A headline has at most 100 characters; whoever does the work needs the names. */
  @Test
  void manyAreCountedInTheFactAndNamedInTheRemedy() {
    LineCheck check = site("remarks: none,").with("    vents: none\n", "    " + ROOF + "\n");
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(
            "the record lacks 6 proofs at 3 items: ",
            "watch the storm response and the response to stale readings at \"Head House\", \"Bay 2\","
                + " \"Bay 3\", and then add each unit to storm-response-seen and stale-response-seen");
  }

  /** Nobody can see vents close that are set to stay where they are. */
  @ParameterizedTest
  @CsvSource({"hold, true", "alarm, true", "close-and-alarm, false"})
  void ventsThatStayAreToBeSeenToStay(String action, boolean stays) {
    LineCheck check =
        site("storm-response-seen: [Head House, Bay 3], stale-response-seen: [Bay 3],")
            .with("on-stale-readings: close", "on-stale-readings: " + action);
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(
            "watch it"
                + (stays
                    ? " (without readings the vents of \"Head House\" stay where they are, as set)"
                    : "")
                + ", and then add the unit to stale-response-seen");
  }

  @Test
  void ventsThatAreNotUnderstoodAreNotJudged() {
    LineCheck check =
        site("storm-response-seen: [Bay 3], stale-response-seen: [Bay 3],")
            .with("vents: roof", "vents: rooof");
    assertThat(check.reportedBy(RULE)).isEmpty();
  }

  @Test
  void whatIsSeenLaterCounts() {
    LineCheck check =
        site(
            "storm-response-seen: [Bay 3], stale-response-seen: [Bay 3], renewed: [{date:"
                + " 2020-06-01, by: R.O., storm-response-seen: [Head House], stale-response-seen:"
                + " [Head House]}],");
    assertThat(lacking(check)).isEmpty();
  }
}
