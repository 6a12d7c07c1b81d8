package org.headhouse.linter.rules.termination;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.LineCheck;
import org.headhouse.linter.SiteText;
import org.headhouse.linter.result.Fix;
import org.headhouse.linter.result.Result;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** One at each of the two ends, never more than two: MODBUS over Serial Line V1.02 §3.4.5. */
class TerminatorsOfASegmentTest {
  private static final LineCheck SITE =
      LineCheck.of(
          new SiteText()
              .unit("120 ohm", "10 m")
              .unit("none", "10 m")
              .repeater("Boiler", "120 ohm", "10 m")
              .unit("none", "10 m")
              .unit("120 ohm", ""));

  private static LineCheck of(String head, String second, String in, String out, String last) {
    return LineCheck.of(
        SITE.site()
            .replaceFirst("termination: 120 ohm", "termination: @head")
            .replaceFirst("termination: none", "termination: @second")
            .replace("{in: 120 ohm, out: 120 ohm}", "{in: @in, out: @out}")
            .replaceFirst("termination: 120 ohm", "termination: @last")
            .replace("@head", head)
            .replace("@second", second)
            .replace("@in", in)
            .replace("@out", out)
            .replace("@last", last));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "120 ohm | none    | 120 ohm | 120 ohm | 120 ohm        |",
        "120 ohm | none    | 120 ohm | 120 ohm | 120 ohm + 1 nF |",
        "none    | none    | 120 ohm | 120 ohm | 120 ohm        | missing-at-end \"Head House\" ends the segment without a terminator",
        "120 ohm | none    | none    | 120 ohm | 120 ohm        | missing-at-end \"Boiler\" ends the segment without a terminator",
        "120 ohm | none    | 120 ohm | none    | 120 ohm        | missing-at-end \"Boiler\" ends the segment without a terminator",
        "120 ohm | none    | 120 ohm | 120 ohm | none           | missing-at-end \"Bay 4\" ends the segment without a terminator",
        "120 ohm | 150 ohm | 120 ohm | 120 ohm | 120 ohm        | mid-line \"Bay 2\" has a 150 ohm terminator but is not at an end of its segment",
      })
  void oneAtEachEnd(
      String head, String second, String in, String out, String last, String reported) {
    assertThat(of(head, second, in, out, last).results().stream().map(this::reported))
        .containsExactlyElementsOf(reported == null ? List.of() : List.of(reported));
  }

  private String reported(Result result) {
    return result.rule().replace("termination.", "") + " " + result.message().fact();
  }

  /** The value is that of the cable; where the cable is not described, the usual one. */
  @ParameterizedTest
  @CsvSource({
    "'impedance: 120 ohm', 120 ohm",
    "'impedance: 100 ohm', 100 ohm",
    "'impedance: wide', 120 ohm",
  })
  void theCableSaysWhatToFit(String impedance, String value) {
    LineCheck check =
        of("none", "none", "120 ohm", "120 ohm", "120 ohm").with("impedance: 120 ohm", impedance);
    assertThat(check.reportedBy("termination.missing-at-end"))
        .singleElement()
        .asString()
        .contains("fit " + value + ", and record it [");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'termination: {in: 120 ohm, out: 120 ohm}' | 'termination: {out: 120 ohm}' | the file does not say whether \"Boiler\" on side in has | {out: 120 ohm}",
        "'termination: {in: 120 ohm, out: 120 ohm}' | 'termination: {in: 120 ohm}'  | the file does not say whether \"Boiler\" on side out has | {in: 120 ohm}",
        "'    termination: {in: 120 ohm, out: 120 ohm}\n' | ''                      | the file does not say whether \"Boiler\" has | Boiler",
      })
  void eachSideOfARepeaterSaysWhatItHas(String text, String other, String fact, String marked) {
    LineCheck check = SITE.with(text, other == null ? "" : other);
    assertThat(check.reportedBy("termination.undeclared"))
        .singleElement()
        .asString()
        .contains(fact, "set termination: {in: 120 ohm, out: 120 ohm}");
    assertThat(check.marked("termination.undeclared")).isEqualTo(marked);
  }

  /** Between the ends there is nothing to look up: a unit that says nothing has none. */
  @Test
  void onlyBetweenTheEndsNoneIsOffered() {
    String units = new SiteText().units(2, "10 m").unit("none", "").toString();
    LineCheck check = LineCheck.of(units.replace("    termination: none\n", ""));
    List<Fix> fixes =
        check.results().stream()
            .filter(result -> result.rule().equals("termination.undeclared"))
            .map(Result::fix)
            .toList();
    assertThat(fixes).hasSize(3);
    assertThat(fixes.get(0)).isNull();
    assertThat(fixes.get(1)).isNotNull();
    assertThat(fixes.get(1).description()).isEqualTo("Say that \"Bay 2\" has no terminator");
    assertThat(fixes.get(2)).isNull();
  }

  @Test
  void aUnitAloneHasOneEnd() {
    LineCheck check = LineCheck.of(new SiteText().unit("none", ""));
    assertThat(check.reportedBy("termination.missing-at-end")).hasSize(1);
  }
}
