package org.headhouse.linter.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.headhouse.linter.Example;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What somebody who may send in a change can make a build read and print. */
class SentInLinksTest {
  private static final String SECRET = "token-4711";

  @TempDir private Path folder;
  private Path repository;
  private String said = "";

  @BeforeEach
  void makeRepository() throws IOException {
    repository = folder.resolve("repository");
    write("repository/.git/config", "url: " + SECRET);
    write("repository/.env", "TOKEN: " + SECRET);
    write("repository/sites/example.yaml", Example.SITE);
    write("outside.yaml", "TOKEN: " + SECRET);
    write(
        "elsewhere/example.yaml",
        Example.SITE.replace("format: 1", "format: 1\n" + SECRET + ": 1"));
  }

  private void write(String name, String text) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  private int run(String... arguments) {
    ByteArrayOutputStream written = new ByteArrayOutputStream();
    PrintStream stream = new PrintStream(written, true, UTF_8);
    int code =
        new Command(java.io.InputStream.nullInputStream(), stream, stream, repository, false)
            .run(List.of(arguments));
    said = written.toString(UTF_8);
    return code;
  }

  @ParameterizedTest
  @CsvSource({
    "device-types.yaml, ../outside.yaml",
    "device-types.yaml, .git/config",
    "device-types.yaml, .env",
    "device-types.yaml, /proc/self/environ",
    "linter.yaml, ../outside.yaml",
    "linter.yaml, .git/config",
    "sites/device-types.yaml, ../../outside.yaml",
    // Whether a file outside exists must not be seen from what is said.
    "linter.yaml, ../not-there.yaml",
    "device-types.yaml, not-there.yaml",
  })
  void aFileThatNobodyNamedIsNoLinkToAnother(String name, String target) throws IOException {
    Files.createSymbolicLink(repository.resolve(name), Path.of(target));
    assertThat(run()).isEqualTo(2);
    assertThat(said)
        .contains(name + " is a link that leads out of the repository")
        .doesNotContain(SECRET);
  }

  @Test
  void aLinkWithinTheRepositoryIsFollowed() throws IOException {
    write("repository/shared/types.yaml", "format: 1\ndevice-types: []\n");
    Files.createSymbolicLink(repository.resolve("device-types.yaml"), Path.of("shared/types.yaml"));
    run();
    assertThat(said).contains("Device types: device-types.yaml").doesNotContain("is a link");
  }

  @Test
  void theFolderOfSitesIsNoLinkToAnother() throws IOException {
    Files.delete(repository.resolve("sites/example.yaml"));
    Files.delete(repository.resolve("sites"));
    Files.createSymbolicLink(repository.resolve("sites"), Path.of("../elsewhere"));
    assertThat(run()).isEqualTo(2);
    assertThat(said).contains("sites is a link that leads out of the repository");
    assertThat(run(folder.resolve("elsewhere/example.yaml").toString())).isEqualTo(2);
  }

  /** The caller's choice; but the lines of a file of somebody else are not printed. */
  @Test
  void whatIsNamedIsReadAndNotQuoted() {
    String outside = folder.resolve("outside.yaml").toString();
    assertThat(run("--deviceTypes=" + outside)).isNotZero();
    assertThat(said).contains("outside.yaml:1:1: error").doesNotContain(SECRET);
    assertThat(run("--policy=" + outside)).isNotZero();
    assertThat(said).contains("outside.yaml:1:1: error").doesNotContain(SECRET);
  }

  /** Where the whole repository is the folder of sites. */
  @Test
  void aSiteIsNoLinkToWhatGitKeeps() throws IOException {
    Files.createSymbolicLink(repository.resolve("open.yaml"), Path.of(".git/config"));
    assertThat(run("--sites=.")).isNotZero();
    assertThat(said)
        .contains(
            "open.yaml: the file cannot be read: it is a link that leads into a folder of git")
        .doesNotContain(SECRET);
  }

  /** Whether they exist or not cannot be told from what is said. */
  @ParameterizedTest
  @ValueSource(
      strings = {"/etc/shadow", "/etc/no-such", "../outside.yaml", "../none", ".git/config"})
  void thePolicyNamesNoBaselineOutside(String baseline) throws IOException {
    write("repository/linter.yaml", "format: 1\nrule-set: 1\nbaseline: \"" + baseline + "\"\n");
    assertThat(run()).isEqualTo(2);
    assertThat(said)
        .contains(
            "linter.yaml names the baseline \""
                + baseline
                + "\", and that is outside its repository: name the file by the parameter of the"
                + " baseline");
  }
}
