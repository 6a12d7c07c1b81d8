package org.headhouse.linter.maven;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.apache.maven.plugin.MojoExecutionException;
import org.apache.maven.plugin.MojoFailureException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * A list over a site that is there: a difference to look at, and nothing else unless it is asked
 * for.
 */
class DraftUpdateTest {
  private static final String LIST =
      "name,address,cable\nPropagation,1,45 m\nSeedling North,2,40 m\nFernery,3,\n";

  @TempDir Path folder;

  @BeforeEach
  void site() throws IOException {
    Files.createDirectories(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/elm-row.yaml"), ElmRow.SITE);
  }

  private GoalRun goal(String list) throws IOException {
    Files.writeString(folder.resolve("units.csv"), list);
    return new GoalRun(new DraftMojo(), folder)
        .with("csv", folder.resolve("units.csv").toFile())
        .with("readings", List.of("light"))
        .with("site", "elm-row");
  }

  private String written() throws IOException {
    return Files.readString(folder.resolve("sites/elm-row.yaml"));
  }

  @Test
  void theDifferenceIsShownAndNothingIsWritten() throws Exception {
    GoalRun goal = goal(LIST);
    goal.execute();
    assertThat(written()).isEqualTo(ElmRow.SITE);
    assertThat(goal.lines())
        .contains(
            "info --- a/sites/elm-row.yaml",
            "info -    cable-to-next: 40 m",
            "info +    cable-to-next: 45 m",
            "info -  - unit: Hardening Bay",
            "info +  - unit: Fernery",
            "info Nothing is written. To write the changes: -Dlinter.write=true")
        .anyMatch(
            line ->
                line.startsWith(
                    "warn sites/elm-row.yaml: \"Hardening Bay\" (unit, address 2) is not in the list,"));
    assertThat(folder.toFile().list()).containsExactlyInAnyOrder("sites", "units.csv");
  }

  /** A link that was sent in leads to no other file, by its own name or by that of a folder. */
  @ParameterizedTest
  @ValueSource(strings = {"sites/elm-row.yaml", "sites/elm-row"})
  void whatIsOutsideOfTheSitesIsLeftAlone(String link) throws Exception {
    Path outside = Files.createDirectory(folder.resolve("outside")).resolve("site.yaml");
    Files.move(folder.resolve("sites/elm-row.yaml"), outside);
    boolean isFile = link.endsWith(".yaml");
    Files.createSymbolicLink(folder.resolve(link), isFile ? outside : outside.getParent());
    GoalRun goal = goal(LIST).with("write", true);
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageContaining("is a link that leads out of the folder of sites");
    assertThat(Files.readString(outside)).isEqualTo(ElmRow.SITE);
    assertThat(goal.lines()).noneMatch(line -> line.contains("Propagation"));
  }

  @Test
  void itIsWrittenWhereThatIsAskedFor() throws Exception {
    GoalRun goal = goal(LIST).with("write", true);
    goal.execute();
    assertThat(written()).contains("  - unit: Fernery\n").doesNotContain("Hardening");
    assertThat(goal.lines()).contains("info Wrote sites/elm-row.yaml");
    GoalRun again = goal(LIST).with("write", true);
    again.execute();
    assertThat(again.lines()).contains("info the list adds nothing to sites/elm-row.yaml");
  }

  /** A site in a folder of its own is found as well, and no second one is made beside it. */
  @Test
  void aSiteWithAFolderOfItsOwnIsFound() throws Exception {
    Files.createDirectories(folder.resolve("sites/elm-row"));
    Files.move(folder.resolve("sites/elm-row.yaml"), folder.resolve("sites/elm-row/site.yaml"));
    goal(LIST).with("write", true).execute();
    assertThat(Files.readString(folder.resolve("sites/elm-row/site.yaml"))).contains("Fernery");
    assertThat(folder.resolve("sites").toFile().list()).containsExactly("elm-row");
  }

  /** The record proves what was there before, and the result of the change is checked. */
  @Test
  void whatBecomesStaleIsReported() throws Exception {
    String record =
        """
        commissioning:
          date: 2026-03-14
          by: R.O.
          outdoor-readings-seen: [Seedling North, Hardening Bay]
        """;
    String live =
        ElmRow.SITE
                .replace("planned", "commissioned")
                .replaceFirst("(Hardening Bay\\n.*\\n    address:) 2", "$1 3")
            + record;
    Files.writeString(folder.resolve("sites/elm-row.yaml"), live);
    GoalRun goal = goal(LIST.replace("Fernery,3", "Fernery,4"));
    goal.execute();
    assertThat(goal.lines())
        .anyMatch(
            line -> line.startsWith("warn ") && line.contains("It is on the live line: isolate"))
        .anyMatch(line -> line.startsWith("warn Also to do: prove "))
        .anyMatch(line -> line.contains("[change.record-kept]"))
        .contains(
            "info Once the changes are written, the goal changes gives the order of the work");
    assertThat(written()).isEqualTo(live);
  }

  @Test
  void anotherSiteIsNotTaken() throws IOException {
    GoalRun goal =
        goal(LIST)
            .with("site", "oak-row")
            .with("output", folder.resolve("sites/elm-row.yaml").toFile());
    assertThatThrownBy(goal::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageContaining("sites/elm-row.yaml is the site elm-row, and not oak-row");
  }

  @Test
  void aSiteThatCannotBeReadIsReported() throws IOException {
    Files.writeString(folder.resolve("sites/elm-row.yaml"), "chain: [\n");
    assertThatThrownBy(goal(LIST)::execute)
        .isInstanceOf(MojoFailureException.class)
        .hasMessageContaining("the site has 1 fault, and nothing is written:")
        .hasMessageContaining("sites/elm-row.yaml:1:1: error: the site cannot be read");
  }

  /** A difference that is taken by another program gives the very bytes that the goal writes. */
  @ParameterizedTest
  @ValueSource(strings = {"git", "patch"})
  void theDifferenceCanBeTaken(String program) throws Exception {
    Random random = new Random(19);
    for (int i = 0; i < 12; i++) {
      String before =
          i % 3 == 0
              ? ElmRow.SITE.stripTrailing()
              : ElmRow.SITE.replace("address: 2", "address: " + (2 + i) + " # " + i);
      Files.writeString(folder.resolve("sites/elm-row.yaml"), before);
      String list = list(random);
      GoalRun shown = goal(list);
      shown.execute();
      List<String> diff = diff(shown.lines());
      goal(list).with("write", true).execute();
      String wanted = written();
      Files.writeString(folder.resolve("sites/elm-row.yaml"), before);
      if (!diff.isEmpty()) {
        take(program, String.join("\n", diff) + "\n");
      }
      assertThat(written()).as(list).isEqualTo(wanted);
      assertThat(diff.isEmpty()).isEqualTo(wanted.equals(before));
    }
  }

  private static String list(Random random) {
    List<String> names = new ArrayList<>(List.of("Propagation", "Seedling North", "Hardening Bay"));
    if (random.nextBoolean()) {
      names.set(1 + random.nextInt(2), "Fernery " + random.nextInt(9));
    }
    if (random.nextBoolean()) {
      names.add(1 + random.nextInt(3), "Mist House");
    }
    StringBuilder list = new StringBuilder("name;address;vents;cable (ft)\n");
    for (int i = 0; i < names.size(); i++) {
      list.append(names.get(i)).append(';').append(i + 1).append(';');
      list.append(List.of("roof", "", "none").get(random.nextInt(3))).append(';');
      list.append(i == names.size() - 1 ? "" : 10 + random.nextInt(90)).append('\n');
    }
    return list.toString();
  }

  /** The lines from the first of the difference on, as long as they look like it. */
  private static List<String> diff(List<String> lines) {
    return lines.stream()
        .map(line -> line.replaceFirst("^info ", ""))
        .dropWhile(line -> !line.startsWith("--- a/"))
        .takeWhile(line -> line.matches("(--- |\\+\\+\\+ |@@ |[ +\\\\-]).*"))
        .toList();
  }

  private void take(String program, String diff) throws IOException, InterruptedException {
    Files.writeString(folder.resolve("taken.diff"), diff);
    List<String> command =
        program.equals("git")
            ? List.of("git", "apply", "taken.diff")
            : List.of("patch", "-s", "-p1", "-i", "taken.diff");
    Process process =
        new ProcessBuilder(command).directory(folder.toFile()).redirectErrorStream(true).start();
    String said = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor(20, TimeUnit.SECONDS)).isTrue();
    assertThat(process.exitValue()).as(said + diff).isZero();
  }
}
