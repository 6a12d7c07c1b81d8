package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.File;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.Test;

/** A draft itself reports what it lacks, in the words of the command line. */
class DraftMojoTest {
  private static final Path FOLDER = Path.of("no-such-folder");

  @Test
  void withoutListAndIdBothAreAskedFor() {
    assertThatThrownBy(new GoalRun(new DraftMojo(), FOLDER)::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage(
            "there is neither a list of units nor an id for the site: use -Dlinter.csv=<file>"
                + " and -Dlinter.site=<id>");
  }

  @Test
  void whatIsThereIsNotAskedFor() {
    assertThatThrownBy(new GoalRun(new DraftMojo(), FOLDER).with("site", "elm-row")::execute)
        .hasMessage("there is no list of units: use -Dlinter.csv=<file>");
    assertThatThrownBy(
            new GoalRun(new DraftMojo(), FOLDER).with("csv", FOLDER.resolve("units.csv").toFile())
                ::execute)
        .hasMessage("the site has no id: use -Dlinter.site=<id>");
  }

  /** A name that no file can have is reported as any other error. */
  @Test
  void aNameThatNoFileCanHaveIsReported() {
    assertThatThrownBy(
            new GoalRun(new DraftMojo(), FOLDER)
                    .with("site", "elm-row")
                    .with("csv", new File("a\0.csv"))
                ::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageContaining("a\uFFFD.csv");
  }
}
