package org.headhouse.linter.rules.conductors;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.FixKind;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The pair at every unit, ground at the head unit: common practice, no source. A common at every
 * device: MODBUS over Serial Line V1.02 §3.3.2.
 */
class ConductorRulesTest {
  private static final LineCheck SITE =
      LineCheck.of(new SiteText().unit("120 ohm", "10 m").unit("120 ohm", ""));

  /** Head unit, follower, and what is reported of them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[A, B, G]    | [A, B]       |",
        "[G, B, A]    | [B, A]       |",
        "[A, B]       | [A, B]       | ground is not connected at \"Head House\"; isolate the supply, connect G, and add it to the list",
        "[A, B, G]    | [A, B, G]    | ground is connected at \"Bay 2\" too; isolate the supply, disconnect G at \"Bay 2\" and take it off the list; keep it at \"Head House\"",
        "[A, B, G]    | [A]          | conductor B is not connected at \"Bay 2\"; isolate the supply, connect B, and add it to the list",
        "[A, B, G]    | [B]          | conductor A is not connected at \"Bay 2\"; isolate the supply, connect A, and add it to the list",
        "[A, B, G]    | []           | conductors A and B are not connected at \"Bay 2\"; isolate the supply, connect A and B, and add it to the list",
        // What is not understood may be any of them.
        "[A, B, earth]| [A, B]       | item 3 of \"conductors\" cannot be \"earth\"; write A, B, G or C",
      })
  void whatIsLanded(String head, String follower, String reported) {
    assertThat(facts(landed(head, follower)))
        .containsExactlyElementsOf(reported == null ? List.of() : List.of(reported));
  }

  private static LineCheck landed(String head, String follower) {
    return SITE.with("[A, B, G]", "@").with("[A, B]", follower).with("@", head);
  }

  private static List<String> facts(LineCheck check) {
    return check.results().stream()
        .map(result -> result.message().fact() + "; " + result.message().remedy())
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[A, B, G] | [A, B, G] |",
        "[A, B, G] | [A, B]    | ground is not connected at \"Bay 2\"",
        "[A, B]    | [A, B, G] | ground is not connected at \"Head House\"",
      })
  void groundAtEveryUnitIsAParameter(String head, String follower, String fact) {
    LineCheck check = landed(head, follower).parameter("conductors.ground", "landed", "every-unit");
    assertThat(check.results().stream().map(result -> result.message().fact()))
        .containsExactlyElementsOf(fact == null ? List.of() : List.of(fact));
  }

  /** Where nobody knows which is the head unit, nobody knows where ground belongs. */
  @Test
  void withoutAHeadUnitGroundIsNotJudged() {
    for (String landed : List.of("[A, B]", "[A, B, G]")) {
      assertThat(landed(landed, "[A, B]").with("role: head", "role: follower").rules())
          .containsExactly("head.missing");
    }
  }

  /**
   * The mark of the positive terminal and the way round of the pair, of head unit and followers.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "B straight | B straight, B straight |",
        "B straight | A crossed, B straight  |",
        "A straight | A straight, A straight |",
        "A straight | B crossed, A straight  |",
        "B straight | A straight, B straight | \"Bay 2\" marks its positive terminal A, the head unit B, but the pair is straight; isolate the supply, swap its conductors, and set pair: crossed",
        "B straight | B crossed, B straight  | \"Bay 2\" marks its positive terminal B, the head unit B, but the pair is crossed; isolate the supply, swap its conductors, and set pair: straight",
        "A straight | B straight, A straight | \"Bay 2\" marks its positive terminal B, the head unit A, but the pair is straight; isolate the supply, swap its conductors, and set pair: crossed",
        // All others agree with one another: it is the head unit that is crossed without need.
        "B crossed  | B straight, B straight | the pair is crossed at the head unit \"Head House\" and nowhere else; isolate the supply, connect the pair straight, and set pair: straight",
        "B crossed  | B crossed, B straight  | \"Bay 3\" marks its positive terminal B, the head unit B, but the pair is straight; isolate the supply, swap its conductors, and set pair: crossed",
        "B crossed  | A straight, B crossed  |",
      })
  void theWayRoundOfThePair(String head, String followers, String reported) {
    assertThat(facts(polarity(head, followers)))
        .containsExactlyElementsOf(reported == null ? List.of() : List.of(reported));
  }

  private static LineCheck polarity(String head, String followers) {
    String[] each = followers.split(", ", -1);
    return LineCheck.of(
            new SiteText()
                .unit("120 ohm", "10 m", keys(head))
                .unit("none", "10 m", keys(each[0]))
                .unit("120 ohm", "", keys(each[1])))
        .types("id: marks-a, positive-terminal: A", "id: marks-b");
  }

  private static String[] keys(String unit) {
    String[] parts = unit.split(" ", -1);
    String type = "device-type: marks-" + parts[0].toLowerCase(Locale.ROOT);
    return parts[1].equals("straight")
        ? new String[] {type}
        : new String[] {type, "pair: " + parts[1]};
  }

  @ParameterizedTest
  @CsvSource({
    "B straight, 'A straight, B straight', Land the pair crossed at \"Bay 2\"",
    "B straight, 'B crossed, B straight', Land the pair straight at \"Bay 2\"",
    "B crossed, 'B straight, B straight', Land the pair straight at \"Head House\"",
  })
  void thePairIsTurned(String head, String followers, String description) {
    assertThat(fix(polarity(head, followers)).description()).isEqualTo(description);
  }

  @Test
  void aHeadUnitAloneMayBeCrossed() {
    LineCheck alone =
        LineCheck.of(new SiteText().unit("120 ohm", "", "device-type: box", "pair: crossed"))
            .types("id: box");
    assertThat(alone.rules()).doesNotContain("conductors.polarity");
  }

  @ParameterizedTest
  @CsvSource({
    "pair: crossed, pair: turned",
    "device-type: marks-a, device-type: unheard-of",
    "device-type: marks-b, device-type: unheard-of",
  })
  void withoutWhatItNeedsPolarityIsNotJudged(String text, String other) {
    LineCheck check = polarity("B straight", "A straight, B crossed");
    assertThat(check.rules()).containsExactly("conductors.polarity", "conductors.polarity");
    assertThat(check.with(text, other).rules().stream().filter("conductors.polarity"::equals))
        .hasSizeLessThan(2);
  }

  /**
   * A planned site is only a text; at one that is live somebody has to look, and where ground
   * belongs is to be decided there in any case.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "[A, B, G] | [A]       | Land B at \"Bay 2\"",
        "[A, B, G] | []        | Land A and B at \"Bay 2\"",
        "[A, B]    | [A, B]    | Connect G at \"Head House\"",
        "[A, B, G] | [A, B, G] | Take G off the conductors of \"Bay 2\"",
      })
  void whatIsPlannedCanBeMended(String head, String follower, String description) {
    LineCheck check = landed(head, follower);
    assertThat(fix(check).description()).isEqualTo(description);
    boolean ofGround = description.contains("G ");
    assertThat(fix(check).kind()).isEqualTo(ofGround ? FixKind.PROPOSED : FixKind.SAFE);
    LineCheck live = check.with("stage: planned", "stage: commissioned");
    assertThat(fix(live).kind()).isEqualTo(FixKind.PROPOSED);
  }

  private static Fix fix(LineCheck check) {
    List<Fix> fixes =
        check.results().stream()
            .filter(result -> result.rule().startsWith("conductors."))
            .map(Result::fix)
            .toList();
    assertThat(fixes).hasSize(1).doesNotContainNull();
    return fixes.get(0);
  }
}
