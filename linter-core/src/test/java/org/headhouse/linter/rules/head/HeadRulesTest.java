package org.headhouse.linter.rules.head;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One head unit, the first on the chain, at address 1: common practice, no source. */
class HeadRulesTest {
  private static final LineCheck SITE =
      LineCheck.of(new SiteText().unit("120 ohm", "10 m").unit("none", "10 m").unit("120 ohm", ""));

  private static LineCheck withRole(LineCheck check, String unit, String role) {
    return check
        .with("unit: " + unit + "\n    role: follower", "unit: " + unit + "\n    role: @")
        .with("role: @", "role: " + role);
  }

  @Test
  void eachFurtherHeadUnitIsReported() {
    LineCheck check = withRole(withRole(SITE, "Bay 2", "head"), "Bay 3", "head");
    List<String> reported = check.reportedBy("head.duplicate");
    assertThat(reported).hasSize(2);
    assertThat(reported.get(0)).contains("\"Bay 2\" is a second head unit", "role: follower");
    assertThat(reported.get(1)).contains("\"Bay 3\" is a second head unit", "role: follower");
    assertThat(SITE.reported()).isEmpty();
  }

  @Test
  void theHeadUnitStandsFirst() {
    LineCheck check = withRole(SITE.with("role: head", "role: follower"), "Bay 2", "head");
    assertThat(check.reportedBy("head.not-first"))
        .singleElement()
        .asString()
        .contains(
            "\"Bay 2\" is item 2 of the chain",
            "list \"Bay 2\" first if it is wired first; otherwise make the first");
    assertThat(check.reportedBy("head.address"))
        .singleElement()
        .asString()
        .contains("\"Bay 2\" has address 2", "give \"Bay 2\" address 1");
    assertThat(check.rules()).doesNotContain("head.missing", "head.duplicate");
  }

  @Test
  void aRepeaterStandsBehindTheHeadUnit() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .repeater("Boiler", "120 ohm", "10 m")
                .unit("120 ohm", "10 m")
                .unit("120 ohm", ""));
    assertThat(check.reportedBy("head.not-first"))
        .singleElement()
        .asString()
        .contains(
            "\"Head House\" is item 2 of the chain", "list the repeater after \"Head House\"");
  }

  @ParameterizedTest
  @CsvSource({
    "role: follower, true",
    // A role that is not understood may be that of the head unit.
    "role: haed, false",
    "rolle: head, false",
  })
  void aChainNeedsAHeadUnit(String role, boolean reported) {
    List<String> missing = SITE.with("role: head", role).reportedBy("head.missing");
    assertThat(missing).hasSize(reported ? 1 : 0);
    assertThat(missing).allMatch(text -> text.contains("wired to, usually \"Head House\""));
  }

  @Test
  void aChainOfRepeatersHasNone() {
    LineCheck check =
        LineCheck.of(
            new SiteText().repeater("East", "120 ohm", "10 m").repeater("West", "120 ohm", ""));
    assertThat(check.reportedBy("head.missing"))
        .singleElement()
        .asString()
        .contains("wired to, usually the first unit");
  }
}
