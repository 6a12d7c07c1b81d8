package org.headhouse.linter.rules.cable;

import static org.assertj.core.api.Assertions.assertThat;

import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;

class CableMixedUnitsTest {
  private static final String RULE = "cable.mixed-units";

  private static LineCheck check(String... lengths) {
    SiteText site = new SiteText().unit("120 ohm", lengths[0]);
    for (int hop = 1; hop < lengths.length; hop++) {
      site = site.unit("none", lengths[hop]);
    }
    return LineCheck.of(site.unit("120 ohm", ""));
  }

  @Test
  void oneUnitIsUsedThroughout() {
    assertThat(check("9 m", "9 m", "9 m", "9 m", "9 m", "9 m", "9 m", "9 m").rules()).isEmpty();
    assertThat(check("9 ft", "9 ft", "9 ft", "9 ft", "9 ft", "9 ft", "9 ft", "9 ft").rules())
        .isEmpty();
  }

  @Test
  void theOneThatFewerHaveIsShown() {
    LineCheck feet = check("9 m", "9 m", "9 ft", "9 m", "9 m", "9 m", "9 ft", "9 m");
    assertThat(feet.reported()).containsExactly("note " + RULE);
    assertThat(feet.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("2 of 8 lengths are in feet, the others in metres");
    assertThat(
            check("9 ft", "9 ft", "9 ft", "9 m", "9 ft", "9 ft", "9 ft", "9 ft").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("1 of 8 lengths is in metres, the others in feet");
  }

  /** A person sees the whole of a short file. */
  @Test
  void aShortFileMayHaveBoth() {
    assertThat(check("9 m", "9 ft", "9 m", "9 ft", "9 m", "9 ft", "9 m").rules()).isEmpty();
  }
}
