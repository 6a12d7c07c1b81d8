package org.headhouse.linter.rules.stub;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * 20 m: MODBUS over Serial Line V1.02 §3.4.3. 2.34, 0.23 and 0.07 m at 100, 10 and 3 ns and a
 * velocity factor of 0.78: data sheet SN65HVD1x, Texas Instruments, table of stub lengths.
 */
class StubTooLongTest {
  private static final String RULE = "stub.too-long";

  private static LineCheck of(String stub, String rise) {
    return LineCheck.of(
            new SiteText()
                .unit("120 ohm", "10 m")
                .unit("none", "10 m", "stub: " + stub)
                .unit("120 ohm", "", "device-type: quick"))
        .types("id: quick" + (rise.isEmpty() ? "" : ", rise-time: " + rise));
  }

  @ParameterizedTest
  @CsvSource({
    "20 m, '', ''",
    "20.1 m, '', error",
    "65 ft, '', ''",
    "66 ft, '', error",
    "0 m, 3 ns, ''",
    "1.97 m, 100 ns, ''",
    "1.98 m, 100 ns, warning",
    "0.19 m, 10 ns, ''",
    "0.2 m, 10 ns, warning",
    "0.05 m, 3 ns, ''",
    "0.06 m, 3 ns, warning",
    "21 m, 100 ns, error",
    "19 m, 1000 ns, ''",
    "21 m, 1000 ns, error"
  })
  void limits(String stub, String rise, String level) {
    assertThat(of(stub, rise).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** The quickest driver of the segment counts, not that at the stub. */
  @ParameterizedTest
  @CsvSource({
    "25 m, '', the Modbus limit is 20 m, 20 m",
    "25 m, 100 ns, the Modbus limit is 20 m, 1.9 m",
    "3 m, 100 ns, '1.9 m is a tenth of the rise time of the driver of \"Bay 3\" (100 ns)', 1.9 m",
    "0.3 m, 10 ns, '0.19 m is a tenth of the rise', 0.19 m",
    "0.08 m, 3 ns, '0.05 m is a tenth of the rise', 0.05 m"
  })
  void theLengthThatIsOfferedMendsIt(String stub, String rise, String limit, String offered) {
    LineCheck check = of(stub, rise);
    assertThat(check.marked(RULE)).isEqualTo(stub);
    assertThat(check.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("\"Bay 2\" is on a " + stub + " stub", limit)
        .contains("shorten the stub to " + offered + " ");
    assertThat(check.with("stub: " + stub, "stub: " + offered).reported()).isEmpty();
  }

  /** 0.66 · 299 792 458 m/s · 10 ns = 1.98 m (computed). */
  @ParameterizedTest
  @CsvSource({
    "0.78, 2.3 m, ''",
    "0.66, 1.97 m, ''",
    "0.66, 1.98 m, warning",
    "0.4, 1.2 m, warning"
  })
  void theVelocityFactorIsAParameter(String factor, String stub, String level) {
    assertThat(of(stub, "100 ns").parameter(RULE, "velocity-factor", factor).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** 2.34 m (TI SN65HVD1x data sheet) at a factor of 0.78. */
  @Test
  void theCableMaySayItsOwn() {
    LineCheck check = of("2.3 m", "100 ns");
    assertThat(check.rules()).containsExactly(RULE);
    assertThat(check.with("120 ohm}", "120 ohm, velocity-factor: 0.78}").reported()).isEmpty();
  }

  @Test
  void aRiseOfNothingIsAFaultOfTheFile() {
    assertThat(of("5 m", "0 ns").rules()).containsExactly("schema.out-of-range");
  }

  /** A repeater makes edges of its own. */
  @Test
  void theDriverOfAnotherSegmentDoesNotCount() {
    LineCheck check =
        LineCheck.of(
                new SiteText()
                    .unit("120 ohm", "10 m", "device-type: quick")
                    .repeater("Boiler", "120 ohm", "10 m")
                    .unit("120 ohm", "", "stub: 3 m"))
            .types("id: quick, rise-time: 100 ns");
    assertThat(check.reported()).isEmpty();
  }

  /** A rise of no time is none that anything can be computed of. */
  @Test
  void aRiseOfNoTimeLimitsNothing() {
    assertThat(of("3 m", "0 ns").rules()).doesNotContain(RULE);
  }

  @Test
  void ofEquallyQuickDriversTheFirstIsNamed() {
    LineCheck check = of("3 m", "100 ns").with("device-type: plain", "device-type: fast");
    LineCheck both =
        new LineCheck(
                check.site().replaceFirst("device-type: quick\n", "firmware: \"1\"\n"),
                check.deviceTypes(),
                check.policy())
            .types("id: fast, rise-time: 100 ns");
    assertThat(both.reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("of \"Head House\" (100 ns)");
  }
}
