package org.headhouse.linter.revision;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.jgit.api.Git;
import org.eclipse.jgit.api.errors.GitAPIException;
import org.eclipse.jgit.util.FS;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.SiteFiles;
import org.headhouse.linter.files.SiteNames;
import org.headhouse.linter.files.UserError;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RevisionTest {
  private static final ParameterNames CALLED = "--"::concat;

  @TempDir Path temporary;
  private Path work = Path.of("");
  private String first = "";

  @BeforeEach
  void repository() throws IOException, GitAPIException {
    work = temporary.resolve("work");
    write("customer/sites/alder.yaml", "alder 1\n");
    write("customer/sites/north/birch.yaml", "birch 1\n");
    write("customer/sites/.hidden.yaml", "hidden 1\n");
    write("customer/device-types.yaml", "types 1\n");
    first = commit();
    write("customer/sites/alder.yaml", "alder 2\n");
    commit();
  }

  /** Measuring it takes seconds, and writes files into the repository. */
  @Test
  void theClockOfTheFileSystemIsNotMeasured() {
    assertThat(FS.getFileStoreAttributes(work).getFsTimestampResolution())
        .isEqualTo(Duration.ofSeconds(2));
  }

  private void write(String file, String text) throws IOException {
    new TestRepository(work).write(file, text);
  }

  private String commit() throws GitAPIException {
    return new TestRepository(work).commit();
  }

  private Path sites() {
    return work.resolve("customer/sites");
  }

  private static String text(Revision revision, Path file) throws IOException {
    return revision.read(file).map(bytes -> new String(bytes, UTF_8)).orElse("none");
  }

  @Test
  void filesAreThoseOfTheRevision() throws Exception {
    try (Revision revision = Revision.open(sites(), "HEAD~1", CALLED)) {
      assertThat(revision.below(sites()))
          .containsExactly(".hidden.yaml", "alder.yaml", "north/birch.yaml");
      assertThat(text(revision, sites().resolve("alder.yaml"))).isEqualTo("alder 1\n");
      assertThat(text(revision, sites().resolve("north"))).isEqualTo("none");
      assertThat(text(revision, sites().resolve("cedar.yaml"))).isEqualTo("none");
      assertThat(text(revision, temporary.resolve("cedar.yaml"))).isEqualTo("none");
      assertThat(revision.below(work.resolve("no-such-folder"))).isEmpty();
      assertThat(revision.below(work)).hasSize(4);
    }
  }

  @Test
  void aRevisionMayBeNamedByItsNumber() throws Exception {
    for (String name : List.of(first, first.substring(0, 12))) {
      try (Revision revision = Revision.open(sites(), name, CALLED)) {
        assertThat(text(revision, sites().resolve("alder.yaml"))).isEqualTo("alder 1\n");
      }
    }
  }

  /** The folder of sites may be reached by a link. */
  @Test
  void linksLeadToTheRepository() throws Exception {
    Path link = Files.createSymbolicLink(temporary.resolve("link"), sites());
    try (Revision revision = Revision.open(link, "HEAD", CALLED)) {
      assertThat(text(revision, link.resolve("alder.yaml"))).isEqualTo("alder 2\n");
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "HEAD~2         | there is no revision HEAD~2: use one that git log shows",
        "no-such-branch | there is no revision no-such-branch: use one that git log shows",
        "HEAD^{tree     | HEAD^{tree is not a revision: use for example HEAD~1 or origin/main",
        "HEAD:customer  | there is no revision HEAD:customer: use one that git log shows",
        ":/A state      | :/A state searches the messages of commits, which is not supported",
        "@^{/A state}   | @^{/A state} searches the messages of commits, which is not supported"
      })
  void whatIsNoRevisionIsReported(String name, String message) {
    assertThatThrownBy(() -> Revision.open(sites(), name, CALLED))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith("--since: " + message);
  }

  @Test
  void aSingleAtIsTheHead() throws Exception {
    for (String name : List.of("@", "@~1", "@^", "@{1}")) {
      try (Revision revision = Revision.open(sites(), name, CALLED)) {
        assertThat(text(revision, sites().resolve("alder.yaml")))
            .as(name)
            .isEqualTo(name.equals("@") ? "alder 2\n" : "alder 1\n");
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "config | '[core' | the configuration of the git repository is damaged: git config --list",
        "config | '[core]\n\trepositoryformatversion = 1\n[extensions]\n\tobjectformat = sha256' | the git repository uses sha256, and only repositories with sha1",
        "HEAD   | garbage | {git} is damaged or leads nowhere: git status says what is wrong",
        "HEAD   | ''      | {git} is damaged or leads nowhere: git status says what is wrong",
      })
  void whatIsDamagedIsReported(String file, String text, String message) throws IOException {
    Files.writeString(work.resolve(".git").resolve(file), text.translateEscapes());
    String git = work.resolve(".git").toRealPath().toString();
    assertThatThrownBy(() -> Revision.open(sites(), "HEAD", CALLED))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith("--since: " + message.replace("{git}", git));
  }

  @ParameterizedTest
  @CsvSource({"gitdir: ../nowhere", "rubbish"})
  void aFileOfGitThatLeadsNowhereIsReported(String text) throws IOException {
    Files.move(work.resolve(".git"), temporary.resolve("moved"));
    Path git = Files.writeString(work.resolve(".git"), text);
    assertThatThrownBy(() -> Revision.open(sites(), "HEAD", CALLED))
        .isInstanceOf(UserError.class)
        .hasMessage(
            "--since: "
                + git
                + " is damaged or leads nowhere: git status says what is wrong with it");
  }

  @Test
  void aShallowCloneIsReported() throws IOException {
    Files.writeString(work.resolve(".git/shallow"), first + "\n");
    assertThatThrownBy(() -> Revision.open(sites(), "HEAD~2", CALLED))
        .hasMessage(
            "--since: this clone is shallow and lacks the revision HEAD~2: fetch the history as"
                + " well, with git fetch --unshallow");
  }

  @Test
  void aRepositoryWithoutRevisionsIsReported() throws Exception {
    Path fresh = Files.createDirectory(temporary.resolve("fresh"));
    Git.init().setDirectory(fresh.toFile()).call().close();
    assertThatThrownBy(() -> Revision.open(fresh, "HEAD", CALLED))
        .hasMessage("--since: the git repository has no revision yet: commit first");
  }

  @Test
  void aFolderOutsideAnyRepositoryIsReported() throws IOException {
    Path outside = Files.createDirectory(temporary.resolve("outside"));
    assertThatThrownBy(() -> Revision.open(outside, "HEAD", CALLED))
        .isInstanceOf(UserError.class)
        .hasMessage(
            "--since is HEAD, and "
                + outside
                + " is not in a git repository: run it in one, or leave out --since");
  }

  private Set<String> changed(Revision revision) throws UserError {
    return changed(revision, Optional.empty());
  }

  private Set<String> changed(Revision revision, Optional<Path> baseline) throws UserError {
    SiteNames names = new SiteNames(List.of("**/*.yaml"), List.of(), CALLED);
    SettingsFiles settings = SettingsFiles.find(sites(), null, null, CALLED);
    List<FoundFile> files = new SiteFiles(sites(), names, false, CALLED).find(settings.all());
    FoundSites found = new FoundSites(sites(), names, files, settings);
    return new EarlierFiles(revision, found, file -> work.relativize(file).toString())
        .changes(baseline)
        .files();
  }

  /** Line ends that git writes otherwise in the work tree are no change. */
  @Test
  void whatDiffersIsFound() throws Exception {
    write("customer/sites/north/birch.yaml", "birch 1\r\n");
    write("customer/sites/cedar.yaml", "cedar 1\n");
    try (Revision revision = Revision.open(sites(), "HEAD", CALLED)) {
      assertThat(changed(revision)).containsExactly("customer/sites/cedar.yaml");
      write("customer/device-types.yaml", "types 2\n");
      assertThat(changed(revision))
          .containsExactlyInAnyOrder(
              "customer/sites/alder.yaml",
              "customer/sites/north/birch.yaml",
              "customer/sites/cedar.yaml",
              "customer/device-types.yaml");
    }
  }

  private static final List<String> ALL_SITES =
      List.of("customer/sites/alder.yaml", "customer/sites/north/birch.yaml");

  /** Where what held for all sites then is gone, all of them differ. */
  @Test
  void allDifferWhereWhatHeldForAllIsGone() throws Exception {
    Files.delete(work.resolve("customer/device-types.yaml"));
    try (Revision revision = Revision.open(sites(), "HEAD", CALLED)) {
      assertThat(changed(revision)).hasSameElementsAs(ALL_SITES);
    }
  }

  @Test
  void allDifferWhereAPolicyIsMoved() throws Exception {
    write("customer/linter.yaml", "policy 1\n");
    commit();
    Files.move(work.resolve("customer/linter.yaml"), sites().resolve("linter.yaml"));
    try (Revision revision = Revision.open(sites(), "HEAD", CALLED)) {
      assertThat(changed(revision)).containsAll(ALL_SITES);
    }
  }

  @Test
  void allDifferWhereTheBaselineDoes() throws Exception {
    write("customer/old.jsonl", "result 1\nresult 2\n");
    commit();
    Optional<Path> baseline = Optional.of(work.resolve("customer/old.jsonl"));
    try (Revision revision = Revision.open(sites(), "HEAD", CALLED)) {
      assertThat(changed(revision, baseline)).isEmpty();
      write("customer/old.jsonl", "result 1\n");
      assertThat(changed(revision, baseline)).containsAll(ALL_SITES);
    }
  }

  /** What the build is made of may change rules, levels, files and version of the linter. */
  @ParameterizedTest
  @CsvSource({
    "pom.xml, true",
    "customer/pom.xml, true",
    "parent/pom.xml, true",
    ".mvn/maven.config, true",
    ".mvn/extensions.xml, true",
    "customer/.mvn/jvm.config, true",
    "customer/pom.xml.bak, false",
    "customer/mvn/maven.config, false"
  })
  void allDifferWhereTheBuildDoes(String file, boolean all) throws Exception {
    write(file, "1\n");
    commit();
    try (Revision revision = Revision.open(sites(), "HEAD", CALLED)) {
      assertThat(changed(revision)).isEmpty();
      write(file, "2\n");
      assertThat(changed(revision).containsAll(ALL_SITES)).isEqualTo(all);
      Files.delete(work.resolve(file));
      assertThat(changed(revision).containsAll(ALL_SITES)).isEqualTo(all);
    }
  }

  /** A new one holds for the sites below it. */
  @ParameterizedTest
  @CsvSource({"pom.xml, true", "customer/.mvn/maven.config, true", "other/pom.xml, false"})
  void allDifferWhereTheBuildIsNew(String file, boolean all) throws Exception {
    write(file, "1\n");
    try (Revision revision = Revision.open(sites(), "HEAD", CALLED)) {
      assertThat(changed(revision).containsAll(ALL_SITES)).isEqualTo(all);
    }
  }

  @Test
  void whatIsGoneDiffers() throws Exception {
    Files.delete(work.resolve("customer/sites/north/birch.yaml"));
    try (Revision revision = Revision.open(sites(), "HEAD", CALLED)) {
      assertThat(changed(revision)).containsExactly("customer/sites/north/birch.yaml");
    }
  }

  @Test
  void nothingIsLeftBehindInTheRepository() throws Exception {
    List<Path> before = files();
    try (Revision revision = Revision.open(sites(), "HEAD", CALLED)) {
      assertThat(revision.below(sites())).isNotEmpty();
    }
    assertThat(files()).isEqualTo(before);
  }

  private List<Path> files() throws IOException {
    try (var files = Files.walk(work)) {
      return files.sorted().toList();
    }
  }
}
