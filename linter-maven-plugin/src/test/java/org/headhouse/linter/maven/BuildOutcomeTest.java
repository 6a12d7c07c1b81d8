package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.headhouse.linter.run.Outcome;
import org.headhouse.linter.run.Refusal;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildOutcomeTest {
  private static final Notification TOOL_ERROR =
      new Notification(Level.ERROR, "the file cannot be read", "sites/b.yaml", null);

  private static Result result(Level level, int line, @Nullable Suppression accepted) {
    return new Result(
        "address.gap",
        level,
        new Message("address 5 follows 2", "the next visit cannot tell", "write 3"),
        new Location("sites/a.yaml", new Region(line, 3, line, 4), "  5"),
        "",
        null,
        List.of(),
        accepted,
        List.of(),
        null,
        null);
  }

  private static CheckReport report(List<Result> results, Notification... notifications) {
    return new CheckReport(results, List.of(notifications), 1, 3, List.of(), List.of(), Set.of());
  }

  private static final List<Result> ONE_OF_EACH =
      List.of(
          result(Level.ERROR, 1, null),
          result(Level.WARNING, 2, null),
          result(Level.NOTE, 3, null),
          result(
              Level.ERROR,
              4,
              new Suppression(
                  "on purpose", new Location("sites/a.yaml", new Region(9, 1, 9, 2), ""))));

  @ParameterizedTest
  @CsvSource({
    "ERROR, ERROR, 1", "ERROR, WARNING, 0", "ERROR, NOTE, 0",
    "WARNING, ERROR, 1", "WARNING, WARNING, 1", "WARNING, NOTE, 0",
    "NOTE, ERROR, 1", "NOTE, WARNING, 1", "NOTE, NOTE, 1",
    "NONE, ERROR, 0", "NONE, WARNING, 0", "NONE, NOTE, 0",
  })
  void whatIsAsSevereAsTheFailLevelFails(Level failing, Level found, int failed) {
    CheckReport report = report(List.of(result(found, 7, null)));
    if (failed == 0) {
      assertThatCode(() -> BuildOutcome.of(Outcome.of(report, failing))).doesNotThrowAnyException();
    } else {
      assertThatThrownBy(() -> BuildOutcome.of(Outcome.of(report, failing)))
          .isInstanceOf(MojoFailureException.class)
          .hasMessageStartingWith("1 result fails the build:\nsites/a.yaml:7:3: ");
    }
  }

  @Test
  void whatIsAcceptedFailsNothing() {
    CheckReport report = report(ONE_OF_EACH.subList(3, 4));
    assertThatCode(() -> BuildOutcome.of(Outcome.of(report, Level.NOTE)))
        .doesNotThrowAnyException();
  }

  @Test
  void theFirstFiveAreRepeated() {
    List<Result> seven =
        IntStream.rangeClosed(1, 7).mapToObj(line -> result(Level.ERROR, line, null)).toList();
    assertThatThrownBy(() -> BuildOutcome.of(Outcome.of(report(seven), Level.ERROR)))
        .isInstanceOf(MojoFailureException.class)
        .message()
        .startsWith("7 results fail the build:\nsites/a.yaml:1:3: error: ")
        .contains("\nsites/a.yaml:5:3: ")
        .doesNotContain(":6:3")
        .endsWith("\nand 2 more");
  }

  @Test
  void anErrorOfTheToolIsAnErrorOfTheBuildWhateverTheFailLevel() {
    assertThatThrownBy(
            () -> BuildOutcome.of(Outcome.of(report(ONE_OF_EACH, TOOL_ERROR), Level.NONE)))
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage("sites/b.yaml: the file cannot be read");
  }

  @Test
  void brokenSitesAreReportedBeforeErrorsOfTheTool() {
    assertThatThrownBy(
            () -> BuildOutcome.of(Outcome.of(report(ONE_OF_EACH, TOOL_ERROR), Level.ERROR)))
        .isInstanceOf(MojoFailureException.class);
  }

  @Test
  void ofAListThatIsRefusedTheFirstFiveFaultsAreRepeated() {
    List<String> faults = IntStream.rangeClosed(1, 6).mapToObj(line -> "u.csv:" + line).toList();
    assertThatThrownBy(() -> BuildOutcome.of(Outcome.of(new Refusal("it has 6 faults", faults))))
        .isInstanceOf(MojoFailureException.class)
        .hasMessage("it has 6 faults:\nu.csv:1\nu.csv:2\nu.csv:3\nu.csv:4\nu.csv:5\nand 1 more");
  }

  @Test
  void aGoodOutcomeFailsNothing() {
    assertThatCode(() -> BuildOutcome.of(Outcome.good())).doesNotThrowAnyException();
  }

  /** Maven prints it as it is, and a name in it may hold what would garble a terminal. */
  @Test
  void aUserErrorIsPrintable() {
    assertThat(BuildOutcome.error(new UserError("a\u001b[2J is lost\nb is lost")))
        .hasMessage("a\uFFFD[2J is lost\nb is lost");
  }
}
