package org.headhouse.linter.rules.commissioning;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every follower's display was looked at: common practice, no source. */
class CommissioningUnitUnseenTest {
  private static final String RULE = "commissioning.unit-unseen";
  private static final LineCheck SITE =
      LineCheck.of(
          new SiteText()
              .unit("120 ohm", "10 m")
              .unit("none", "10 m")
              .unit("120 ohm", "")
              .measured("pair-resistance: 60 ohm"));

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'[Bay 2, Bay 3]' | |",
        "'[Bay 3, Bay 2]' | |",
        "'[Bay 2]'        | \"Bay 3\" | [Bay 2]",
        "'[Bay 3]'        | \"Bay 2\" | [Bay 3]",
        // What is misspelt, or not a list at all, is reported as such.
        "'[Bay 2, Bay3]'  | |",
        "5                | |",
      })
  void eachFollowerIsSeen(String seen, String unseen, String marked) {
    LineCheck check =
        SITE.with("outdoor-readings-seen: [Bay 2, Bay 3]", "outdoor-readings-seen: " + seen);
    assertThat(check.reportedBy(RULE)).hasSize(unseen == null ? 0 : 1);
    assertThat(check.reportedBy(RULE))
        .allMatch(reported -> reported.contains("the outdoor readings at " + unseen + ": "));
    if (unseen != null) {
      assertThat(check.marked(RULE)).isEqualTo(marked);
    }
  }

  @Test
  void withoutAListOneResultNamesEachUnit() {
    LineCheck check = SITE.with("outdoor-readings-seen: [Bay 2, Bay 3]", "remarks: none");
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("the record lacks the outdoor readings at \"Bay 2\", \"Bay 3\": ")
        .contains(
            "check the displays of \"Bay 2\", \"Bay 3\", and then add each name to"
                + " outdoor-readings-seen (under renewed if the record has an earlier day)");
    assertThat(check.results())
        .filteredOn(result -> result.rule().equals(RULE))
        .flatExtracting(Result::identities)
        .extracting(Identity::unit)
        .containsExactly("Bay 2", "Bay 3");
  }

  /** What is accepted of one unit is not accepted of another. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {"Bay 2 | false", "Bay 3 | false", "Bay 2, Bay 3 | true"})
  void aSuppressionIsForItsUnit(String accepted, boolean silent) {
    LineCheck check =
        SITE.with("outdoor-readings-seen: [Bay 2, Bay 3]", "outdoor-readings-seen: []");
    StringBuilder entries = new StringBuilder("suppressions:\n");
    for (String unit : accepted.split(", ", -1)) {
      entries.append("  - {rule: " + RULE + ", unit: " + unit + ", justification: In store.}\n");
    }
    assertThat(LineCheck.of(check.site() + entries.toString()).results())
        .filteredOn(result -> result.rule().equals(RULE))
        .singleElement()
        .returns(silent, Result::suppressed);
  }

  @ParameterizedTest
  @CsvSource({"Bay 3, 0", "Bay 2, 1"})
  void aUnitThatIsSeenLaterIsSeen(String later, int results) {
    LineCheck check =
        SITE.with(
            "outdoor-readings-seen: [Bay 2, Bay 3]",
            "outdoor-readings-seen: [Bay 2], renewed: [{date: 2020-06-01, by: R.O., reason: added,"
                + " outdoor-readings-seen: ["
                + later
                + "]}]");
    assertThat(check.reportedBy(RULE)).hasSize(results);
  }
}
