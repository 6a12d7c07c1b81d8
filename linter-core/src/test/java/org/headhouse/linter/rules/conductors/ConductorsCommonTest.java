package org.headhouse.linter.rules.conductors;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A common to every device, earthed at one point: MODBUS over Serial Line V1.02, sections 3.3.2 and
 * 3.4.4. An isolated interface without it floats: TI SLLA272.
 */
class ConductorsCommonTest {
  private static final String RULE = "conductors.common";

  private static SiteText site() {
    return new SiteText()
        .unit("120 ohm", "10 m", "device-type: box")
        .unit("none", "10 m", "device-type: box")
        .unit("120 ohm", "", "device-type: box");
  }

  /** C at the head unit, in the middle, at the end; whether the type is isolated. */
  private static LineCheck check(String head, String middle, String end, String isolated) {
    String text =
        site()
            .toString()
            .replace("[A, B, G]", with(head, "A, B, G"))
            .replaceFirst("\\[A, B]", with(middle, "A, B"));
    int last = text.lastIndexOf("[A, B]");
    return LineCheck.of(
            last < 0
                ? text
                : text.substring(0, last) + with(end, "A, B") + text.substring(last + 6))
        .types("id: box, unit-load: 1/8" + (isolated.isEmpty() ? "" : ", isolated: " + isolated));
  }

  private static String with(String common, String others) {
    return common.equals("C") ? "[" + others + ", C]" : "[" + others + "]";
  }

  @ParameterizedTest
  @CsvSource({
    "C, C, C, '', ''",
    "C, C, C, true, ''",
    "-, -, -, '', ''",
    "-, -, -, false, ''",
    "-, -, -, true, note",
    "C, C, -, '', warning",
    "C, -, -, '', warning",
    "-, C, -, false, warning",
    "-, -, C, true, warning",
  })
  void everywhereOrNowhere(String head, String middle, String end, String isolated, String level) {
    assertThat(check(head, middle, end, isolated).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  @Test
  void theItemsWithoutItAreCounted() {
    assertThat(check("C", "-", "-", "").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(
            "the common is not connected at \"Bay 2\" and 1 other, but it is at \"Head House\"");
    assertThat(check("C", "C", "-", "").reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("the common is not connected at \"Bay 3\"");
  }

  /** Somebody has to land it, and the fix makes one result of none. */
  @Test
  void theFixIsProposed() {
    Fix fix = requireNonNull(check("C", "-", "-", "").results().get(0).fix());
    assertThat(fix.kind()).isEqualTo(FixKind.PROPOSED);
    assertThat(fix.replacements()).hasSize(2);
  }

  /** Each galvanic section has a common of its own. */
  @Test
  void sectionsAreJudgedAlone() {
    String text =
        new SiteText()
            .unit("120 ohm", "10 m")
            .repeater("Booster", "120 ohm", "10 m")
            .unit("120 ohm", "")
            .toString()
            .replace("[A, B, G]", "[A, B, G, C]");
    String conductors = "repeater: Booster\n    conductors: {in: [A, B%s], out: [A, B, G]}\n";
    String isolated = text.replace("repeater: Booster\n", conductors + "    isolated: true\n");
    assertThat(LineCheck.of(isolated.formatted(", C")).rules()).isEmpty();
    assertThat(LineCheck.of(isolated.formatted("")).rules()).containsExactly(RULE);
    // Without isolation it is one section, in which the far unit lacks the common.
    String joined = text.replace("repeater: Booster\n", conductors.replace(", G]", "]"));
    assertThat(LineCheck.of(joined.formatted(", C")).rules()).containsExactly(RULE);
  }

  /** What is not written is not known to be missing. */
  @Test
  void equipmentThatSaysNothingIsPassedOver() {
    String text =
        new SiteText()
            .unit("120 ohm", "10 m")
            .equipment("Dosing Rig", "", "10 m")
            .unit("120 ohm", "")
            .toString()
            .replace("    conductors: [A, B, G]\n", "    conductors: [A, B, G, C]\n");
    int last = text.lastIndexOf("[A, B]");
    String landed = text.substring(0, last) + "[A, B, C]" + text.substring(last + 6);
    assertThat(LineCheck.of(landed).rules()).containsExactly(RULE);
    assertThat(LineCheck.of(landed.replace("    conductors: [A, B]\n", "")).rules()).isEmpty();
  }
}
