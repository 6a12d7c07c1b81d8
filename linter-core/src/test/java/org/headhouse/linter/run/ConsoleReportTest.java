package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.result.AbsentResult;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Location;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.result.Suppression;
import org.headhouse.linter.source.Region;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ConsoleReportTest {
  private static final Notification TOOL_ERROR =
      new Notification(Level.ERROR, "the file cannot be read", "sites/b.yaml", null);

  private final RecordingConsole console = new RecordingConsole();

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
  @CsvSource({"ERROR, 1", "WARNING, 2", "NOTE, 3", "NONE, 0"})
  void whatIsAsSevereAsThePrintLevelIsPrintedAtItsOwnLevel(Level printed, int lines) {
    new ConsoleReport(console, printed).print(report(ONE_OF_EACH));
    List<String> all =
        List.of(
            "found error sites/a.yaml:1:3: error: address 5 follows 2 [address.gap]",
            "found warning sites/a.yaml:2:3: warning: address 5 follows 2 [address.gap]",
            "found note sites/a.yaml:3:3: note: address 5 follows 2 [address.gap]");
    assertThat(console.lines().stream().filter(line -> line.contains("[address.gap]")))
        .isEqualTo(all.subList(0, lines));
    assertThat(console.lines())
        .endsWith(
            "found note 1 site, 3 units: 1 error, 1 warning, 1 note, 1 suppressed",
            "found note      3  address.gap",
            "found note What a rule asks for, with an example: page address.gap");
  }

  /** 5000 results of one file were 3 MB. */
  @Test
  void ofManyResultsOfARuleInAFileTheFirstArePrinted() {
    List<Result> many = new ArrayList<>();
    for (int line = 1; line <= 5000; line++) {
      many.add(result(line % 2 == 0 ? Level.ERROR : Level.NOTE, line, null));
    }
    new ConsoleReport(console, Level.NOTE).print(report(many));
    assertThat(console.lines().stream().filter(line -> line.contains("[address.gap]")))
        .hasSize(42)
        .startsWith("found note sites/a.yaml:1:3: note: address 5 follows 2 [address.gap]")
        .endsWith(
            "found note sites/a.yaml: note: 2480 more of these are not shown [address.gap]",
            "found error sites/a.yaml: error: 2480 more of these are not shown [address.gap]");
    assertThat(console.lines())
        .endsWith(
            "found note 1 site, 3 units: 2500 errors, 0 warnings, 2500 notes",
            "found note   5000  address.gap",
            "found note What a rule asks for, with an example: page address.gap");
  }

  @Test
  void ofManyGoneResultsTheFirstArePrinted() {
    Identity identity = new Identity("a", "chain/Bay\u001b[2J/address", null, "5", null, null);
    AbsentResult gone = new AbsentResult("address.gap", "sites/a.yaml", identity, 3);
    new ConsoleReport(console, Level.NOTE).printAbsent(Collections.nCopies(5000, gone));
    assertThat(console.lines())
        .hasSize(22)
        .startsWith(
            "found note 15000 results of the baseline are gone: write the baseline again, so that none can come"
                + " back unseen:",
            "found note   sites/a.yaml: chain/Bay\uFFFD[2J/address: 5 [address.gap], 3 times")
        .endsWith("found note   and 4980 more");
  }

  @Test
  void theRegionIsMarkedAtTheLevelOfItsResult() {
    new ConsoleReport(console, Level.NOTE).print(report(ONE_OF_EACH.subList(1, 2)));
    assertThat(console.lines()).contains("found warning   2 |   5", "found warning     |   ^");
  }

  /** The parts of a message stand apart, and so do results. */
  @Test
  void reasonAndRemedyFollowTheExcerptOnLinesOfTheirOwn() {
    new ConsoleReport(console, Level.NOTE).print(report(ONE_OF_EACH.subList(0, 1)));
    assertThat(console.lines())
        .startsWith(
            "found error sites/a.yaml:1:3: error: address 5 follows 2 [address.gap]",
            "found error   1 |   5",
            "found error     |   ^",
            "found error   why: the next visit cannot tell",
            "found error   fix: write 3",
            "found error ",
            "found note 1 site, 3 units: 1 error, 0 warnings, 0 notes");
  }

  @Test
  void troublesArePrintedWhateverThePrintLevel() {
    new ConsoleReport(console, Level.NONE).print(report(List.of(), TOOL_ERROR));
    assertThat(console.lines()).startsWith("report error sites/b.yaml: the file cannot be read");
  }

  /**
   * A name from the file system may hold what would garble a terminal, or pass for another line.
   */
  @Test
  void aTroubleIsOneLineWhateverTheNameOfItsFile() {
    new ConsoleReport(console, Level.NOTE)
        .print(
            List.of(new Notification(Level.ERROR, "it is gone", "sites/a\nb\u001b[2J.yaml", null)));
    assertThat(console.lines()).containsExactly("report error sites/a b\uFFFD[2J.yaml: it is gone");
  }
}
