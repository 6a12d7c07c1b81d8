package org.headhouse.linter.rules.segment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 32 unit loads; of 1/2, 1/4 and 1/8 that are 64, 128 and 256 devices: The RS-485 Design Guide, TI
 * SLLA272, and the RS-485/RS-422 Circuit Implementation Guide, Analog Devices AN-960.
 */
class SegmentOverloadedTest {
  private static final String RULE = "segment.overloaded";

  private static SiteText units(int number, String... more) {
    return new SiteText()
        .unit("120 ohm", "1 m", more)
        .units(number - 2, "1 m", more)
        .unit("120 ohm", "", more);
  }

  private static LineCheck ofType(int number, String load) {
    return LineCheck.of(units(number, "device-type: box")).types("id: box, unit-load: " + load);
  }

  @ParameterizedTest
  @CsvSource({
    "32, 1, 0",
    "33, 1, 1",
    "64, 1/2, 0",
    "65, 1/2, 1",
    "128, 1/4, 0",
    "129, 1/4, 1",
    "96, 1/3, 0",
    "97, 1/3, 1",
    "247, 1/8, 0"
  })
  void number(int units, String load, int results) {
    assertThat(ofType(units, load).rules()).hasSize(results).allMatch(RULE::equals);
  }

  /** One load too many falsifies voltages that are weak besides; it is reported once. */
  @Test
  void isReportedOnceAndAtTheUnitThatIsTooMany() {
    SiteText site =
        new SiteText()
            .bias("Head House", "650 ohm", "4.75 V")
            .unit("120 ohm", "20 m")
            .units(31, "20 m")
            .unit("120 ohm", "");
    LineCheck check = LineCheck.of(site);
    assertThat(check.reported()).containsExactly("error " + RULE);
    assertThat(check.marked(RULE)).isEqualTo("Bay 33");
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("\"Bay 33\" takes the segment over the limit of 32 unit loads; the total is 33")
        .contains("fit a repeater after \"Bay 31\"");
  }

  /** The near side of the repeater is a load too. */
  @Test
  void theRepeaterThatIsOfferedMendsIt() {
    SiteText site = new SiteText().unit("120 ohm", "1 m").units(30, "1 m");
    site.repeater("Boiler", "120 ohm", "1 m").units(1, "1 m").unit("120 ohm", "");
    assertThat(LineCheck.of(site).reported()).isEmpty();
    SiteText tooLate = new SiteText().unit("120 ohm", "1 m").units(31, "1 m");
    tooLate.repeater("Boiler", "120 ohm", "1 m").unit("120 ohm", "");
    assertThat(LineCheck.of(tooLate).rules()).containsExactly(RULE);
  }

  @Test
  void theTypeThatIsOfferedMendsIt() {
    assertThat(ofType(33, "1/8").reported()).isEmpty();
  }

  @Test
  void aSingleUnitMayBeTooMuch() {
    LineCheck check =
        LineCheck.of(
                new SiteText()
                    .unit("120 ohm", "1 m", "device-type: box")
                    .unit("120 ohm", "", "device-type: box"))
            .types("id: box, unit-load: 32");
    assertThat(check.rules()).isEqualTo(List.of(RULE));
    assertThat(check.marked(RULE)).isEqualTo("Bay 2");
  }
}
