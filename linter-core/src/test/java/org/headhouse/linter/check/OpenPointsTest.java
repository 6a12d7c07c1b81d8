package org.headhouse.linter.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.Checks;
import org.headhouse.linter.Example;
import org.headhouse.linter.result.Message;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a draft left open is reported until somebody deletes the comment. */
class OpenPointsTest {
  private static final String RULE = "draft.open-point";

  private static List<String> open(String text) {
    CheckReport report = Checks.of(text);
    return report.results().stream()
        .filter(result -> result.rule().equals(RULE))
        .map(
            result ->
                result.level().word()
                    + " "
                    + result.location().region().startLine()
                    + ":"
                    + result.location().region().startColumn()
                    + " "
                    + result.message().fact())
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      value = {
        "# look: the rate     | 1",
        "#look: the rate      | 1",
        "#   look: the rate   | 1",
        "# to look: the rate  | 0",
        "# outlook: the rate  | 0",
        "# look at the rate   | 0",
        "title: 'look: here'  | 0",
        "title: '# look: x'   | 0",
        "title: \"a # look:\" | 0",
      })
  void onlyAMarkedCommentIsOpen(String line, int results) {
    assertThat(open(Example.with("stage: planned\n", "stage: planned\n" + line + "\n")))
        .hasSize(results);
  }

  /** What a visit did not see is no question of a draft. */
  @Test
  void whatAVisitDidNotSeeIsOpen() {
    String comment =
        "# look: outdoor readings seen, Seedling North: not seen on 2026-05-02 by R.O.; display"
            + " dark, and the cable behind it is cut";
    CheckReport report =
        Checks.of(Example.with("stage: planned\n", "stage: planned\n" + comment + "\n"));
    Message message = report.results().get(0).message();
    assertThat(report.results()).hasSize(1);
    assertThat(message.fact())
        .isEqualTo(
            "outdoor readings seen, Seedling North: not seen on 2026-05-02 by R.O.; display dark,"
                + " and the cable b …");
    assertThat(message.remedy()).contains("prove it again", "delete the comment");
  }

  @Test
  void eachIsOneResultAtItsPlace() {
    String text =
        Example.with(
            "    address: 2\n", "    # look: its vents\n    address: 2  # look: on the unit\n");
    assertThat(open(text))
        .containsExactly(
            "note 17:5 the draft left this open: its vents",
            "note 18:17 the draft left this open: on the unit");
    assertThat(open(text.replace("planned", "commissioned")))
        .allMatch(result -> result.startsWith("error "))
        .hasSize(2);
  }
}
