package org.headhouse.linter.rules.equipment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.headhouse.linter.SiteText.BROADCASTS_IGNORED;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Servers have to accept broadcasts, and answer none (MODBUS over Serial Line V1.02, section 2.1):
 * what one of them does with it shows nowhere.
 */
class EquipmentBroadcastTest {
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "broadcasts: ignored | true  | ''",
        "broadcasts: ignored | false | ''",
        "broadcasts: obeyed  | true  | error equipment.broadcast",
        "broadcasts: obeyed  | false | ''",
        "isolated: false     | true  | warning equipment.broadcast",
        "isolated: false     | false | ''",
        "broadcasts: perhaps | true  | error schema.bad-value",
      })
  void whatItDoesWithThem(String key, boolean broadcast, String reported) {
    SiteText site = new SiteText();
    if (broadcast) {
      site.broadcast(12, "5 s");
    }
    site.unit("120 ohm", "10 m").equipment("Dosing Rig", "", "10 m").unit("120 ohm", "");
    assertThat(LineCheck.of(site).with(BROADCASTS_IGNORED, key).reported())
        .isEqualTo(reported.isEmpty() ? List.of() : List.of(reported));
  }

  /** A repeater lets the broadcast through. */
  @Test
  void eachPieceIsTold() {
    SiteText site =
        new SiteText()
            .broadcast(12, "5 s")
            .unit("120 ohm", "10 m")
            .equipment("Dosing Rig", "", "10 m")
            .repeater("Booster", "120 ohm", "10 m")
            .equipment("Feed Mixer", "", "10 m")
            .unit("120 ohm", "");
    LineCheck check = LineCheck.of(site).with(BROADCASTS_IGNORED, "broadcasts: obeyed");
    assertThat(check.reportedBy("equipment.broadcast"))
        .hasSize(2)
        .anyMatch(line -> line.contains("\"Dosing Rig\" obeys"))
        .anyMatch(line -> line.contains("\"Feed Mixer\" obeys"));
    assertThat(check.rules()).containsOnly("equipment.broadcast");
  }
}
