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
    try (GitHistory history =
        GitHistory.open(sites(), List.of(work.resolve("customer/device-types.yaml")))) {
      FileHistory found = history.of(SiteInput.file(file), Files.readAllBytes(file));
      // The contents are read while the repository is open.
      List<FileHistory.Version> read = new ArrayList<>();
      for (FileHistory.Version version : found.earlier()) {
        byte[] content = version.content().read();
        FileHistory.Content others = version.deviceTypes();
        byte[] types = others == null ? null : others.read();
        read.add(
            new FileHistory.Version(
                version.revision(), () -> content, types == null ? null : () -> types));
      }
      return new FileHistory(found.isKnown(), found.revision(), read, found.isWhole());
    }
  }

  private static List<String> withTypes(FileHistory history) throws IOException {
    List<String> texts = new ArrayList<>();
    for (FileHistory.Version version : history.earlier()) {
      FileHistory.Content types = version.deviceTypes();
      texts.add(
          new String(version.content().read(), UTF_8).strip()
              + (types == null ? "" : " " + new String(types.read(), UTF_8).strip()));
    }
    return texts;
  }

  private void types(String text) throws IOException {
    new TestRepository(work).write("customer/device-types.yaml", text);
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

  /** A file that is the same is another state where its device types are others. */
  @Test
  void eachStateHasTheDeviceTypesOfItsRevision() throws Exception {
    Path alder = write("alder.yaml", "1\n");
    types("a\n");
    commit();
    types("b\n");
    commit();
    write("alder.yaml", "2\n");
    commit();
    types("c\n");
    String last = commit();
    assertThat(withTypes(history(alder))).containsExactly("2 b", "1 b", "1 a");
    assertThat(history(alder).revision()).isNotEqualTo(last);
    // As they are now counts, committed or not.
    types("b\n");
    assertThat(withTypes(history(alder))).containsExactly("2 c", "1", "1 a");
    assertThat(withTypes(history(write("new.yaml", "1\n")))).isEmpty();
  }

  @Test
  void aStateBeforeThereWereDeviceTypesHasThoseOfNow() throws Exception {
    Path alder = write("alder.yaml", "1\n");
    commit();
    write("alder.yaml", "2\n");
    types("a\n");
    commit();
    assertThat(withTypes(history(alder))).containsExactly("1");
  }

  /** In a folder of its own, as a site may be. */
  @Test
  void aFileThatWasMovedHasTheStatesOfItsOldPlace() throws Exception {
    write("alder.yaml", "site: alder\n");
    write("birch.yaml", "site: birch\n");
    commit();
    write("alder.yaml", "site: alder\nstage: planned\n");
    types("a\n");
    commit();
    types("b\n");
    commit();
    Files.delete(sites().resolve("alder.yaml"));
    Path moved = write("alder/site.yaml", "site: alder\nstage: planned\n");
    remove("alder.yaml");
    String last = commit();
    assertThat(withTypes(history(moved)))
        .containsExactly("site: alder\nstage: planned a", "site: alder");
    assertThat(history(moved).revision()).isEqualTo(last);
    // Moved and changed at once: the id says that it is the same site.
    Files.delete(moved);
    remove("alder/site.yaml");
    Path again = write("customers/alder.yaml", "# Moved.\nsite: alder\n");
    commit();
    assertThat(withTypes(history(again)))
        .containsExactly(
            "site: alder\nstage: planned", "site: alder\nstage: planned a", "site: alder");
  }

  private void remove(String file) throws Exception {
    try (Git git = Git.open(work.toFile())) {
      git.rm().addFilepattern("customer/sites/" + file).call();
    }
  }
}
