package org.headhouse.linter.revision;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.report.FileHistory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The earlier states of a file, in repositories made with git's own library. */
class GitHistoryTest {
  @TempDir Path work;

  private Path sites() {
    return work.resolve("customer/sites");
  }

  private Path write(String file, String text) throws IOException {
    return new TestRepository(work).write("customer/sites/" + file, text);
  }

  private String commit() throws GitAPIException {
    return new TestRepository(work).commit().substring(0, 12);
  }

  private FileHistory history(Path file) throws IOException {
    try (GitHistory history = GitHistory.open(sites())) {
      FileHistory found = history.of(SiteInput.file(file), Files.readAllBytes(file));
      // The contents are read while the repository is open.
      List<FileHistory.Version> read = new ArrayList<>();
      for (FileHistory.Version version : found.earlier()) {
        byte[] content = version.content().read();
        read.add(new FileHistory.Version(version.revision(), () -> content));
      }
      return new FileHistory(found.isKnown(), found.revision(), read, found.isWhole());
    }
  }

  private static List<String> texts(FileHistory history) throws IOException {
    List<String> texts = new ArrayList<>();
    for (FileHistory.Version version : history.earlier()) {
      texts.add(version.revision() + " " + new String(version.content().read(), UTF_8));
    }
    return texts;
  }

  @Test
  void statesAreTheNewestFirstAndEachOnce() throws Exception {
    Path alder = write("alder.yaml", "1\n");
    String first = commit();
    write("alder.yaml", "2\n");
    String second = commit();
    write("birch.yaml", "other\n");
    commit();
    write("alder.yaml", "1\n");
    commit();
    write("alder.yaml", "3\n");
    String last = commit();
    FileHistory history = history(alder);
    assertThat(history.isKnown()).isTrue();
    assertThat(history.isWhole()).isTrue();
    assertThat(history.revision()).isEqualTo(last);
    assertThat(texts(history)).hasSize(2).first().asString().endsWith(" 1\n");
    assertThat(texts(history)).last().isEqualTo(second + " 2\n");
    assertThat(first).isNotEqualTo(second);
  }

  @Test
  void whatIsNotCommittedIsSaid() throws Exception {
    Path alder = write("alder.yaml", "1\n");
    String first = commit();
    write("alder.yaml", "2\n");
    FileHistory history = history(alder);
    assertThat(history.revision()).isEqualTo("changed since " + first + ", and not committed");
    assertThat(texts(history)).containsExactly(first + " 1\n");
    assertThat(history(write("new.yaml", "1\n"))).isEqualTo(FileHistory.UNKNOWN);
  }

  /** Git writes other line ends where its settings say so. */
  @Test
  void otherLineEndsAreNoOtherState() throws Exception {
    Path alder = write("alder.yaml", "a: 1\nb: 2\n");
    String first = commit();
    write("alder.yaml", "a: 1\r\nb: 2\r\n");
    FileHistory history = history(alder);
    assertThat(history.revision()).isEqualTo(first);
    assertThat(history.earlier()).isEmpty();
  }

  @Test
  void withoutARepositoryNothingIsKnown() throws Exception {
    assertThat(history(write("alder.yaml", "1\n"))).isEqualTo(FileHistory.UNKNOWN);
  }

  @Test
  void aDamagedRepositoryIsNone() throws Exception {
    Path alder = write("alder.yaml", "1\n");
    commit();
    Files.writeString(work.resolve(".git/config"), "[core\n");
    assertThat(history(alder)).isEqualTo(FileHistory.UNKNOWN);
  }

  @Test
  void aRevisionThatIsNotThereLeavesThePartThatIs() throws Exception {
    Path alder = write("alder.yaml", "1\n");
    commit();
    write("alder.yaml", "2\n");
    String second = commit();
    try (Git git = Git.open(work.toFile())) {
      Files.writeString(
          work.resolve(".git/shallow"), git.getRepository().resolve("HEAD").getName() + "\n");
    }
    FileHistory history = history(alder);
    assertThat(history.isWhole()).isFalse();
    assertThat(history.revision()).isEqualTo(second);
    assertThat(history.earlier()).isEmpty();
  }
}
