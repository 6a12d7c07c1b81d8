package org.headhouse.linter.rules.conductors;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The terminals of equipment, converters and repeaters, which are landed like those of units. */
class ItemsAtThePairTest {
  private static final String LANDED = "conductors: [A, B]";

  private static String site() {
    return new SiteText()
        .unit("120 ohm", "10 m", "device-type: box")
        .equipment("Dosing Rig", "", "10 m", "device-type: box")
        .converter("Office", "16 ms", "10 m")
        .repeater("Booster", "120 ohm", "10 m")
        .unit("120 ohm", "", "device-type: box")
        .toString();
  }

  /** With other keys of one item, in place of what it says of its conductors. */
  private static LineCheck with(String item, String keys) {
    String text = site();
    int start = text.indexOf(": " + item + "\n") + item.length() + 3;
    int end = Math.max(text.indexOf("\n  - ", start), text.indexOf("\n", start));
    String own = text.substring(start, end).replace("    " + LANDED + "\n", "");
    String all = text.substring(0, start) + "    " + keys + "\n" + own + text.substring(end);
    return LineCheck.of(all)
        .types("id: box, positive-terminal: B", "id: other, positive-terminal: A");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Dosing Rig | conductors: [A, B]                | ''",
        "Dosing Rig | conductors: [B]                   | conductor A is not connected at \"Dosing Rig\"",
        "Dosing Rig | unit-load: 1/4                    | ''",
        "Office     | conductors: [A]                   | conductor B is not connected at \"Office\"",
        "Booster    | conductors: [A, B]                | ''",
        "Booster    | conductors: [A]                   | conductor B is not connected at \"Booster\"",
        "Booster    | conductors: {in: [A, B], out: [B]} | conductor A is not connected at the side out of \"Booster\"",
        "Booster    | conductors: {in: [], out: [A, B]} | conductors A and B are not connected at the side in of \"Booster\"",
        "Booster    | conductors: {in: [A, B]}          | ''",
      })
  void halfAPair(String item, String keys, String fact) {
    List<String> found = with(item, keys).reportedBy("conductors.pair-missing");
    if (fact.isEmpty()) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).singleElement().asString().contains("error: " + fact, "a device on half");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Office  | device-type: box                        | ''",
        "Office  | device-type: other                      | \"Office\" marks its positive terminal A, the head unit B, but the pair is straight",
        "Office  | {device-type: other, pair: crossed}     | ''",
        "Office  | {device-type: box, pair: crossed}       | \"Office\" marks its positive terminal B, the head unit B, but the pair is crossed",
        // Of a type that nobody knows, the pair may be crossed with good reason.
        "Office  | pair: crossed                           | ''",
        "Booster | {device-type: box, pair: {out: crossed}} | the side out of \"Booster\" marks its positive terminal B",
        "Booster | {device-type: other, pair: crossed}     | ''",
        "Booster | {device-type: other, pair: {in: crossed, out: straight}} | the side out of \"Booster\" marks",
        "Booster | device-type: other                      | \"Booster\" marks its positive terminal A",
      })
  void theWayRound(String item, String keys, String fact) {
    String lines =
        keys.startsWith("{")
            ? keys.substring(1, keys.length() - 1).replaceFirst(", pair", "\n    pair")
            : keys;
    List<String> found = with(item, lines).reportedBy("conductors.polarity");
    if (fact.isEmpty()) {
      assertThat(found).isEmpty();
    } else {
      assertThat(found).singleElement().asString().contains("error: " + fact, "a device with the");
    }
  }

  /** One mistake: the ground of the line is landed, but not where it belongs. */
  @Test
  void groundAtAConverterInsteadOfTheHeadUnit() {
    LineCheck check =
        with("Office", "conductors: [A, B, G]")
            .with(
                "    conductors: [A, B, G]\n    termination: 120",
                "    conductors: [A, B]\n    termination: 120");
    assertThat(check.reported()).containsExactly("warning conductors.ground");
    assertThat(check.reportedBy("conductors.ground").get(0))
        .contains("ground is connected at \"Office\" instead of at \"Head House\"");
    assertThat(check.marked("conductors.ground")).isEqualTo("[A, B]");
    assertThat(requireNonNull(check.results().get(0).fix()).replacements()).hasSize(2);
  }
}
