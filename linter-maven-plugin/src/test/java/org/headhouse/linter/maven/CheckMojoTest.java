package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Date;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What one execution does to the results of another. */
class CheckMojoTest {
  private static final String REPLACED =
      " and are replaced: give each execution its own outputDirectory";

  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/elm-row.yaml"), ElmRow.SITE);
  }

  private List<String> run(Instant buildStart, String output) throws Exception {
    GoalRun run =
        new GoalRun(new CheckMojo(), folder)
            .with("failLevel", "none")
            .with("outputDirectory", folder.resolve(output).toFile())
            .with("buildStart", Date.from(buildStart));
    run.execute();
    return run.lines().stream().filter(line -> line.contains(REPLACED)).toList();
  }

  @Test
  void theResultsOfAnotherExecutionOfTheBuild() throws Exception {
    Instant start = Instant.now().minusSeconds(5);
    assertThat(run(start, "target")).isEmpty();
    assertThat(run(start, "target"))
        .singleElement()
        .asString()
        .contains("The results of another execution of this build are in target" + REPLACED);
    assertThat(run(start, "other")).isEmpty();
  }

  @Test
  void theResultsOfAnEarlierBuild() throws Exception {
    assertThat(run(Instant.now().minusSeconds(5), "target")).isEmpty();
    assertThat(run(Instant.now().plusSeconds(5), "target")).isEmpty();
  }

  private List<String> run(Instant buildStart, String execution, String format) throws Exception {
    GoalRun run =
        new GoalRun(new CheckMojo(), folder)
            .with("failLevel", "none")
            .with("format", format)
            .with("outputDirectory", folder.resolve("target").toFile())
            .with("execution", execution)
            .with("buildStart", Date.from(buildStart));
    run.execute();
    return run.lines().stream().filter(line -> line.contains("another execution")).toList();
  }

  @Test
  void twoExecutionsKeepTheirResults() throws Exception {
    Instant start = Instant.now().minusSeconds(5);
    assertThat(run(start, "first", "gitlab")).isEmpty();
    assertThat(run(start, "second", "json"))
        .singleElement()
        .asString()
        .contains("are in target: those of second go into a subfolder of that name");
    assertThat(folder.resolve("target/results-gitlab.json")).content().startsWith("[");
    assertThat(folder.resolve("target/second/results.jsonl")).exists();
    assertThat(Files.readString(folder.resolve("target/results.sarif")))
        .containsPattern("\"headhouse-linter/[^\"]*first/\"");
    assertThat(Files.readString(folder.resolve("target/second/results.sarif")))
        .containsPattern("\"headhouse-linter/[^\"]*second/\"");
  }
}
