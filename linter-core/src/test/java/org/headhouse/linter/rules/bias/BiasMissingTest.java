package org.headhouse.linter.rules.bias;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Bias where a device needs it, on a pair of 450 to 650 ohm: MODBUS over Serial Line V1.02, section
 * 3.4.6.
 */
class BiasMissingTest {
  private static final String RULE = "bias.missing";
  private static final String[] TYPES = {
    "id: needing, idle-bias: needed, unit-load: 1/8",
    "id: sound, idle-bias: not-needed, unit-load: 1/8",
    "id: unknown, unit-load: 1/8"
  };

  private static LineCheck check(SiteText site) {
    return LineCheck.of(site).typesAsWritten(TYPES);
  }

  private static SiteText site(String terminator, String bias, String... types) {
    SiteText site = new SiteText();
    if (!bias.isEmpty()) {
      site.line("bias", bias);
    }
    for (int i = 0; i < types.length; i++) {
      boolean isLast = i == types.length - 1;
      String end = i == 0 || isLast ? terminator : "none";
      site.unit(end, isLast ? "" : "10 m", "device-type: " + types[i]);
    }
    return site;
  }

  private static String bias(String each) {
    return "[{at: Head House, resistors: " + each + ", supply: 5 V}]";
  }

  /** What three units need, their terminators, and the bias of the line. */
  @ParameterizedTest
  @CsvSource({
    "sound sound sound, 120 ohm, '', ''",
    "sound needing sound, 120 ohm, '', error",
    "sound unknown sound, 120 ohm, '', warning",
    "unknown needing sound, 120 ohm, '', error",
    "sound needing sound, 120 ohm, 510 ohm, ''",
    "sound unknown sound, 120 ohm, 510 ohm, ''",
    // Nothing pulls the idle pair to 0 V, so only a receiver that needs bias is told.
    "sound unknown sound, 120 ohm + 1 nF, '', ''",
    "sound needing sound, 120 ohm + 1 nF, '', error",
    // Pulls over 2 kohm hold nothing; 2 kohm do.
    "sound needing sound, 120 ohm, 2.01 kohm, error",
    "sound unknown sound, 120 ohm, 4.7 kohm, warning",
  })
  void levels(String types, String terminator, String each, String level) {
    String bias = each.isEmpty() ? "" : bias(each);
    assertThat(check(site(terminator, bias, types.split(" "))).reported())
        .isEqualTo(level.isEmpty() ? List.of() : List.of(level + " " + RULE));
  }

  /** 2 kohm are bias, if too little. */
  @Test
  void atTwoKilohmItIsBiasAndOutOfRange() {
    assertThat(check(site("120 ohm", bias("2 kohm"), "sound", "needing", "sound")).rules())
        .doesNotContain(RULE)
        .contains("bias.weak");
  }

  @ParameterizedTest
  @CsvSource({
    "'', has no bias",
    "4.7 kohm, has only pulls over 2 kohm",
  })
  void weakPullsAreNamed(String each, String fact) {
    String bias = each.isEmpty() ? "" : bias(each);
    assertThat(check(site("120 ohm", bias, "sound", "needing", "sound")).reportedBy(RULE))
        .singleElement()
        .asString()
        .contains(
            "error: the segment from \"Head House\" to \"Bay 3\" "
                + fact
                + ", but \"Bay 2\" needs it");
  }

  /** Each segment needs its own; a repeater says of each side what it needs. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "{in: not-needed, out: not-needed} | ''",
        "{in: needed, out: not-needed}     | error",
        "{in: not-needed, out: needed}     | error",
        "{in: not-needed}                  | set idle-bias: {out: not-needed} for every receiver",
        "{out: not-needed}                 | set idle-bias: {in: not-needed} for every receiver",
      })
  void theSidesOfARepeater(String needs, String reported) {
    SiteText site = site("120 ohm", "", "sound").repeater("Booster", "120 ohm", "10 m");
    String text = site.unit("120 ohm", "", "device-type: sound").toString();
    LineCheck check =
        LineCheck.of(
                text.replace("{in: not-needed, out: not-needed}", needs)
                    .replace("light: local}\n", "light: local}\n    cable-to-next: 10 m\n"))
            .typesAsWritten(TYPES);
    if (reported.isEmpty()) {
      assertThat(check.rules()).isEmpty();
    } else {
      assertThat(check.reportedBy(RULE)).singleElement().asString().contains(reported);
    }
  }

  @Test
  void bothForms() {
    String text =
        site("120 ohm", "", "unknown")
            .repeater("Booster", "120 ohm", "10 m")
            .unit("120 ohm", "", "device-type: sound")
            .toString()
            .replace("{in: not-needed, out: not-needed}", "{out: not-needed}")
            .replace("light: local}\n", "light: local}\n    cable-to-next: 10 m\n");
    assertThat(LineCheck.of(text).typesAsWritten(TYPES).reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("set idle-bias: {in: not-needed} or idle-bias: not-needed for every receiver");
  }

  /** At most three are named. */
  @Test
  void manyThatNeedIt() {
    assertThat(
            check(site("120 ohm", "", "needing", "needing", "needing", "needing", "needing"))
                .reportedBy(RULE))
        .singleElement()
        .asString()
        .contains("but \"Head House\", \"Bay 2\", \"Bay 3\" and 2 others need it");
  }

  /** The resistors that are offered do; nothing else is wrong with the line then. */
  @Test
  void theBiasThatIsOfferedHolds() {
    LineCheck check = check(site("120 ohm", "", "sound", "needing", "sound"));
    assertThat(check.reportedBy(RULE).get(0)).contains("fit bias resistors of 560 ohm each at");
    assertThat(check(site("120 ohm", bias("560 ohm"), "sound", "needing", "sound")).rules())
        .isEmpty();
  }

  /** Where bias would overload the drivers (54 ohm, TI SLLA272), it is not offered. */
  @Test
  void noBiasIsOfferedThatOverloadsTheDrivers() {
    SiteText site = new SiteText().unit("120 ohm", "0.1 m", "device-type: whole");
    site.units(24, "0.1 m", "device-type: whole").unit("120 ohm", "", "device-type: whole");
    assertThat(LineCheck.of(site).typesAsWritten("id: whole, idle-bias: needed").results())
        .singleElement()
        .satisfies(
            result -> {
              assertThat(result.rule()).isEqualTo(RULE);
              assertThat(result.message().remedy())
                  .startsWith("divide the segment with a repeater");
              assertThat(result.fix()).isNull();
            });
  }

  /** Bias of the far segment that is written at the near side of the repeater is one mistake. */
  @ParameterizedTest
  @CsvSource({"'Head House; Road, side: in'", "'Road, side: in; Head House'"})
  void biasAtTheWrongSideOfARepeaterIsToldOnce(String places) {
    String each = ", resistors: 510 ohm, supply: 5 V}";
    String bias = "[{at: " + places.replace("; ", each + ", {at: ") + each + "]";
    LineCheck check =
        check(
            new SiteText()
                .line("bias", bias)
                .unit("120 ohm", "10 m", "device-type: needing")
                .repeater("Road", "120 ohm", "10 m")
                .unit("120 ohm", "", "device-type: needing"));
    assertThat(check.reported()).containsExactly("error bias.several");
    assertThat(check.marked("bias.several")).isEqualTo("Road");
    assertThat(check.reportedBy("bias.several").get(0)).contains("set side: out;");
    assertThat(check.with("side: in", "side: out").reported()).isEmpty();
  }
}
