package org.headhouse.linter.rules.cable;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;

class CableLengthUnknownTest {
  private static final String RULE = "cable.length-unknown";

  @Test
  void isReportedOnceASegmentAtTheFirst() {
    LineCheck check =
        LineCheck.of(
            new SiteText()
                .unit("120 ohm", "10 m")
                .unit("none", "")
                .unit("none", "")
                .repeater("Boiler", "120 ohm", "10 m")
                .unit("none", "")
                .unit("120 ohm", ""));
    assertThat(check.reported()).containsExactly("note " + RULE, "note " + RULE);
    assertThat(check.reportedBy(RULE).get(0)).contains("after \"Bay 2\" and 1 other is missing");
    assertThat(check.reportedBy(RULE).get(1)).contains("after \"Bay 4\" is missing");
    assertThat(check.results().get(0).related())
        .singleElement()
        .satisfies(one -> assertThat(one.text()).contains("\"Bay 3\""));
  }

  /** What is written but not understood has a result of the schema. */
  @Test
  void aLengthThatIsNotUnderstoodIsNotMissing() {
    assertThat(LineCheck.of(new SiteText().unit("120 ohm", "10").unit("120 ohm", "")).rules())
        .containsExactly("schema.bad-quantity");
  }

  @Test
  void theLastItemHasNone() {
    assertThat(LineCheck.of(new SiteText().unit("120 ohm", "10 m").unit("120 ohm", "")).rules())
        .isEmpty();
  }
}
