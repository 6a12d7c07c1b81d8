package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoFailureException;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.headhouse.linter.revision.HermeticSystemReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What can silence a result in a build, and what never can: each cell of the page's table. */
class SilenceOfBuildsTest {
  private static final Path PAGE = Path.of("../linter-core/docs/silence.md");
  private static final String HEADING = "## In a build with Maven";
  private static final String CHANGED_ONLY = "`changedOnly`";
  private static final String ANOTHER = "another execution with the same `outputDirectory`";

  private static final String FAULT = "[address.duplicate]";
  private static final String SOUND =
      ElmRow.SITE.replace(
          "Hardening Bay\n    role: follower\n    address: 2",
          "Hardening Bay\n    role: follower\n    address: 3");

  @TempDir private Path folder = Path.of("");

  /**
   * A cell.
   *
   * @param before what the revision has beside a faulty site
   * @param after what differs from it today; an empty text for a file that is gone
   * @param told what has to be told unless the cell silences it
   */
  private record Cell(
      String by,
      boolean silences,
      String what,
      Map<String, String> before,
      Map<String, String> after,
      String told) {
    @Override
    public String toString() {
      return by + (silences ? " silences " : " never silences ") + what;
    }
  }

  private static Cell never(
      String what, Map<String, String> before, Map<String, String> after, String told) {
    return new Cell(CHANGED_ONLY, false, what, before, after, told);
  }

  static Stream<Cell> cells() {
    String other = SOUND.replace("site: elm-row", "site: ash-lane");
    String policy = "format: 1\nrule-set: 1\n";
    return Stream.of(
        new Cell(
            CHANGED_ONLY,
            true,
            "results of unchanged sites, if nothing that applies to all of them differs",
            Map.of("sites/ash-lane.yaml", other),
            Map.of("sites/ash-lane.yaml", other + "# changed\n"),
            FAULT),
        never(
            "results of sites that differ",
            Map.of(),
            Map.of("sites/elm-row.yaml", ElmRow.SITE + "# changed\n"),
            FAULT),
        never(
            "any result if the policy differs",
            Map.of("linter.yaml", policy),
            Map.of("linter.yaml", policy + "# changed\n"),
            FAULT),
        never(
            "any result if the device types differ",
            Map.of(),
            Map.of("device-types.yaml", "format: 1\ndevice-types: []\n"),
            FAULT),
        never(
            "what is wrong in the policy or the device types, even if neither differs",
            Map.of(
                "device-types.yaml", "format: 1\ndevice-type: []\n", "sites/ash-lane.yaml", other),
            Map.of("sites/ash-lane.yaml", other + "# changed\n"),
            "[schema.unknown-key]"),
        never(
            "any result if a `pom.xml` differs",
            Map.of("pom.xml", "<project/>"),
            Map.of("pom.xml", "<project><!-- excludes --></project>"),
            FAULT),
        never(
            "any result if a file in `.mvn` differs",
            Map.of(".mvn/maven.config", "-Dlinter.excludes=b*\n"),
            Map.of(".mvn/maven.config", "-Dlinter.excludes=c*\n"),
            FAULT),
        never(
            "a clash of a changed site with an unchanged one",
            Map.of(),
            Map.of("sites/more/elm-row.yaml", SOUND),
            "[site.duplicate-id]"),
        never(
            "that a file which looks like a site is not read",
            Map.of(),
            Map.of("sites/TWO.YAML", SOUND),
            "is not read as a site"),
        never(
            "that a commissioned site is gone",
            Map.of("sites/ash-lane.yaml", other.replace("stage: planned", "stage: commissioned")),
            Map.of("sites/ash-lane.yaml", ""),
            "[change.commissioned-removed]"),
        never(
            "that results of the baseline are gone with their site",
            Map.of(
                "sites/ash-lane.yaml",
                other,
                "linter.yaml",
                policy + "baseline: known.jsonl\n",
                "known.jsonl",
                """
                {"baseline-format":1}
                {"file":"sites/ash-lane.yaml","site":"ash-lane","at":"line/baud","rule":"serial.unsupported"}
                """),
            Map.of("sites/ash-lane.yaml", ""),
            "sites/ash-lane.yaml: line/baud [serial.unsupported]"),
        new Cell(
            ANOTHER,
            true,
            "what the first wrote into the files, which the second replaces",
            Map.of(),
            Map.of(),
            ""),
        new Cell(ANOTHER, false, "that it is replaced", Map.of(), Map.of(), ""),
        new Cell(ANOTHER, false, "that the first fails the build", Map.of(), Map.of(), ""));
  }

  private void write(Map<String, String> files) throws IOException {
    for (Map.Entry<String, String> file : new TreeMap<>(files).entrySet()) {
      Path path = folder.resolve(file.getKey());
      Files.createDirectories(path.getParent());
      if (file.getValue().isEmpty()) {
        Files.delete(path);
      } else {
        Files.writeString(path, file.getValue());
      }
    }
  }

  private void commit() throws GitAPIException {
    HermeticSystemReader.use();
    try (Git git = Git.init().setDirectory(folder.toFile()).call()) {
      git.add().addFilepattern(".").call();
      git.commit()
          .setMessage("A state")
          .setAuthor("R.O.", "r.o@example.org")
          .setCommitter("R.O.", "r.o@example.org")
          .setSign(false)
          .call();
    }
  }

  private GoalRun goal() {
    return new GoalRun(new CheckMojo(), folder)
        .with("buildStart", Date.from(Instant.now().minusSeconds(60)));
  }

  private static boolean tells(GoalRun goal, String told) throws Exception {
    try {
      goal.execute();
    } catch (MojoFailureException broken) {
      // What is told counts here.
    }
    return goal.lines().stream().anyMatch(line -> line.contains(told));
  }

  @ParameterizedTest
  @MethodSource("cells")
  void everyCellIsSo(Cell cell) throws Exception {
    write(Map.of("sites/elm-row.yaml", ElmRow.SITE));
    if (cell.by().equals(ANOTHER)) {
      anotherExecution(cell);
      return;
    }
    write(cell.before());
    commit();
    write(cell.after());
    assertThat(tells(goal().with("since", "HEAD"), cell.told())).as("without").isTrue();
    assertThat(tells(goal().with("since", "HEAD").with("changedOnly", true), cell.told()))
        .as("with")
        .isNotEqualTo(cell.silences());
  }

  private void anotherExecution(Cell cell) throws Exception {
    Files.createDirectories(folder.resolve("more"));
    Files.writeString(folder.resolve("more/elm-row.yaml"), SOUND);
    boolean fails = tells(goal(), FAULT);
    assertThat(fails).isTrue();
    Path written = folder.resolve("target/results.sarif");
    assertThat(Files.readString(written)).contains("address.duplicate\"");
    boolean isReplaced =
        tells(goal().with("sites", folder.resolve("more").toFile()), "and are replaced");
    assertThat(isReplaced).isTrue();
    boolean isLost =
        Files.readString(written)
            .lines()
            .noneMatch(line -> line.contains("\"address.duplicate\"") && line.contains("ruleId"));
    assertThat(isLost).as(cell.what()).isTrue();
  }

  @Test
  void thePageHasTheCells() throws IOException {
    String page = Files.readString(PAGE);
    String table = page.substring(page.indexOf(HEADING));
    assertThat(page).contains(HEADING);
    for (String by : List.of(CHANGED_ONLY, ANOTHER)) {
      assertThat(table)
          .contains("| " + by + " | " + whats(by, true) + " | " + whats(by, false) + " |\n");
    }
    assertThat(table.lines().filter(line -> line.startsWith("| "))).hasSize(1 + 2);
  }

  private static String whats(String by, boolean silences) {
    return String.join(
        "; ",
        cells()
            .filter(cell -> cell.by().equals(by) && cell.silences() == silences)
            .map(Cell::what)
            .toList());
  }
}
