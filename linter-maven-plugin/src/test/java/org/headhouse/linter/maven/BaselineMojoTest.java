package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the goal leaves alone. */
class BaselineMojoTest {
  private static final String BROKEN = ElmRow.SITE + "supervision: [\n";

  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    write("sites/elm-row.yaml", ElmRow.SITE);
  }

  private void write(String file, String text) throws IOException {
    Files.writeString(folder.resolve(file), text);
  }

  private GoalRun run(String baseline) {
    return new GoalRun(new BaselineMojo(), folder)
        .with("baseline", folder.resolve(baseline).toFile());
  }

  private String known() throws IOException {
    return Files.readString(folder.resolve("known.jsonl"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"sites/elm-row.yaml", "pom.xml"})
  void aFileThatIsNoBaselineStays(String file) throws IOException {
    write("pom.xml", "<project/>\n");
    String before = Files.readString(folder.resolve(file));
    assertThatThrownBy(run(file)::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage(
            file
                + " exists, but is not a baseline, and was not changed: name another file with"
                + " linter.baseline");
    assertThat(folder.resolve(file)).hasContent(before);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "\n",
        "{\"baseline-format\":1}\n<<<<<<< ours\n",
        "<<<<<<< a\n{\"baseline-format\":1}"
      })
  void whatHasBeenOneIsWrittenAnew(String damaged) throws Exception {
    write("known.jsonl", damaged);
    run("known.jsonl").execute();
    assertThat(known()).contains("address.duplicate");
  }

  /** The rules that count on what is broken there are silent. */
  @Test
  void whatASiteThatIsNotUnderstoodHadStays() throws Exception {
    run("known.jsonl").execute();
    String before = known();
    assertThat(before).contains("address.duplicate");
    write("sites/elm-row.yaml", BROKEN);
    run("known.jsonl").execute();
    assertThat(known()).isEqualTo(before);
    write(
        "sites/elm-row.yaml",
        ElmRow.SITE.replace(
            "Hardening Bay\n    role: follower\n    address: 2",
            "Hardening Bay\n    role: follower\n    address: 3"));
    run("known.jsonl").execute();
    assertThat(known()).isEqualTo("{\"baseline-format\":1}\n");
  }

  @Test
  @DisabledOnOs(OS.WINDOWS)
  void nothingIsWrittenWhereASiteCannotBeRead() throws Exception {
    run("known.jsonl").execute();
    String before = known();
    Files.delete(folder.resolve("sites/elm-row.yaml"));
    Files.createSymbolicLink(folder.resolve("sites/elm-row.yaml"), Path.of("nowhere"));
    assertThatThrownBy(run("known.jsonl")::execute).isInstanceOf(MojoExecutionException.class);
    assertThat(known()).isEqualTo(before);
  }
}
