package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A list from a visit over a site: a difference to look at, and written where that is asked for.
 */
class DraftVisitTest {
  private static final String SITE =
      ElmRow.SITE.replaceFirst("(?s)address: 2(?!.*address)", "address: 3");
  private static final String LIST =
      """
      what,where,acceptable,found,by,date,remark
      site,elm-row,,,,,
      outdoor readings seen (yes),Seedling North,,yes,R.O.,14 March 2026,
      outdoor readings seen (yes),Hardening Bay,,,,,
      pair resistance (ohm),Propagation,53.6 to 66.3 ohm,"120,5",R.O.,14 March 2026,warm
      """;

  @TempDir Path folder;

  @BeforeEach
  void site() throws IOException {
    Files.createDirectories(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/elm-row.yaml"), SITE);
  }

  private GoalRun goal(String list) throws IOException {
    Files.writeString(folder.resolve("visit.csv"), list);
    return goal(folder.resolve("visit.csv").toFile());
  }

  private GoalRun goal(File list) {
    return new GoalRun(new DraftMojo(), folder).with("visit", list);
  }

  private String written() throws IOException {
    return Files.readString(folder.resolve("sites/elm-row.yaml"));
  }

  @Test
  void theDifferenceIsShownAndNothingIsWritten() throws Exception {
    GoalRun goal = goal(LIST);
    goal.execute();
    assertThat(written()).isEqualTo(SITE);
    assertThat(goal.lines())
        .contains(
            "info --- a/sites/elm-row.yaml",
            "info +commissioning:",
            "info +  date: 2026-03-14",
            "info +    # warm",
            "info +    pair-resistance: 120.5 ohm",
            "info +    - Seedling North",
            "info sites/elm-row.yaml: 1 row is blank, and counts as not seen",
            "info Nothing is written. To write the changes: -Dlinter.write=true")
        .noneMatch(line -> line.startsWith("info -  "))
        .anyMatch(line -> line.contains(": The stage stays as it is: once"));
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("sites", "visit.csv");
  }

  /** A value out of range is a result of the record, as ever. */
  @Test
  void theRecordIsChecked() throws Exception {
    Files.writeString(
        folder.resolve("sites/elm-row.yaml"), SITE.replace("planned", "commissioned"));
    GoalRun goal = goal(LIST);
    goal.execute();
    assertThat(goal.lines())
        .anyMatch(line -> line.contains("[commissioning.measured-off]"))
        .anyMatch(line -> line.contains("[commissioning.unit-unseen]"))
        .noneMatch(line -> line.contains("stage stays"));
  }

  @Test
  void itIsWrittenWhereThatIsAskedFor() throws Exception {
    GoalRun goal = goal(LIST).with("write", true);
    goal.execute();
    assertThat(written()).startsWith(SITE + "commissioning:\n  date: 2026-03-14\n");
    assertThat(goal.lines()).contains("info Wrote sites/elm-row.yaml");
    assertThat(folder.resolve("sites").toFile().list()).containsExactly("elm-row.yaml");
    GoalRun again = goal(LIST).with("write", true);
    again.execute();
    assertThat(again.lines()).contains("info the list adds nothing to sites/elm-row.yaml");
  }

  @Test
  void aFaultyListIsRefused() throws Exception {
    GoalRun goal = goal(LIST.replace("14 March 2026", "03/04/2026")).with("write", true);
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageContaining("the list from the visit has 2 faults, and nothing is written:")
        .hasMessageContaining("visit.csv:3:");
    assertThat(written()).isEqualTo(SITE);
    assertThat(goal.lines())
        .anyMatch(line -> line.contains("the date \"03/04/2026\" can be read in two ways"));
  }

  /** The list that the goal report writes, filled in, is found its site by itself. */
  @Test
  void theListOfTheGoalReportComesBack() throws Exception {
    new GoalRun(new ReportMojo(), folder).execute();
    try (var files = Files.walk(folder.resolve("target"))) {
      Path list =
          files.filter(file -> file.endsWith("elm-row-visit.csv")).findFirst().orElseThrow();
      goal(list.toFile()).execute();
      assertThat(written()).isEqualTo(SITE);
      String filled =
          Files.readString(list)
              .replaceAll("(outdoor.*),,,,\r\n", "$1,ok,R.O.,2026-03-14,\r\n")
              .replaceAll("(idle.*),,,,\r\n", "$1,0.25,R.O.,2026-03-14,\r\n");
      goal(filled).with("write", true).execute();
    }
    assertThat(written())
        .endsWith(
            """
            commissioning:
              date: 2026-03-14
              by: R.O.
              measured:
                idle-voltage: 0.25 V
                elsewhere:
                  - {at: Hardening Bay, idle-voltage: 0.25 V}
              outdoor-readings-seen:
                - Seedling North
                - Hardening Bay
            """);
  }

  @Test
  void theSiteIsFoundOrNamed() throws Exception {
    Files.move(folder.resolve("sites/elm-row.yaml"), folder.resolve("sites/other.yaml"));
    assertThatThrownBy(goal(LIST)::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageContaining(
            "there is no sites/elm-row.yaml: name the file of the site with"
                + " -Dlinter.output=<file>");
    goal(LIST).with("output", folder.resolve("sites/other.yaml").toFile()).execute();
    assertThatThrownBy(goal(LIST.replace("site,elm-row", "site,../elm-row"))::execute)
        .hasMessageContaining("the site has no id that its file can be found by");
    assertThatThrownBy(goal(LIST.replace("site,elm-row,,,,,\n", ""))::execute)
        .hasMessageContaining("visit.csv does not say which site it is of");
    assertThatThrownBy(goal(LIST.replace("elm-row", "oak-row")).with("site", "elm-row")::execute)
        .hasMessageContaining("there is no sites/elm-row.yaml");
  }

  @Test
  void oneListIsGivenAtATime() throws Exception {
    assertThatThrownBy(
            goal(LIST).with("csv", folder.resolve("visit.csv").toFile()).with("site", "elm-row")
                ::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageContaining("give one of the two");
    assertThatThrownBy(goal(folder.resolve("none.csv").toFile())::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageContaining("the list from the visit cannot be read");
  }

  @Test
  void whatIsForANewSiteDoesNotGoWithAVisit() throws Exception {
    assertThatThrownBy(
            goal(LIST).with("baud", 19200).with("readings", List.of("light")).with("write", true)
                ::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage(
            "linter.visit adds to a site that is there: leave out linter.readings, linter.baud"
                + " (only for a new site)");
    assertThat(written()).isEqualTo(SITE);
  }

  /** As a spreadsheet of another country saves it, in another code. */
  @Test
  void aSpreadsheetsOwnFormIsUnderstood() throws Exception {
    String saved = LIST.replace("\"120,5\"", "120,5x").replace(",", ";").replace("120;5x", "120,5");
    Files.write(folder.resolve("visit.csv"), ("\uFEFF" + saved).getBytes(UTF_8));
    goal(folder.resolve("visit.csv").toFile()).with("write", true).execute();
    assertThat(written()).contains("    pair-resistance: 120.5 ohm\n");
    assertThat(List.of(written().split("commissioning:", -1))).hasSize(2);
  }
}
