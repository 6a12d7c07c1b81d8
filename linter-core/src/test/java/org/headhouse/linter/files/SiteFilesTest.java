package org.headhouse.linter.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteFilesTest {
  private static final List<String> USUAL = SiteNames.USUAL;
  private static final ParameterNames CALLED = name -> "linter." + name;

  @TempDir Path temporary;
  private Path sites = Path.of("");

  @BeforeEach
  void repository() throws IOException {
    sites = temporary.resolve("sites");
    for (String file :
        List.of(
            "alder.yaml",
            "Birch.yml",
            "read-me.txt",
            "alder.yaml~",
            "north/cedar.yaml",
            "north/dale/site.yaml",
            "types/device-types.yaml",
            ".elm.yaml",
            ".fern/gorse.yaml",
            "north/.hazel/ivy.yaml")) {
      Path path = sites.resolve(file);
      Files.createDirectories(path.getParent());
      Files.writeString(path, "");
    }
  }

  private static SiteFiles files(Path folder, List<String> includes, List<String> excludes)
      throws UserError {
    return new SiteFiles(folder, new SiteNames(includes, excludes, CALLED), true, CALLED);
  }

  private List<FoundFile> found(List<String> includes, List<String> excludes, Path... others)
      throws UserError {
    return files(sites, includes, excludes).find(List.of(others));
  }

  private List<String> find(List<String> includes, List<String> excludes, Path... others)
      throws UserError {
    return found(includes, excludes, others).stream()
        .map(file -> sites.relativize(file.path()) + (file.refused() == null ? "" : " refused"))
        .toList();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          # includes              | excludes         | found
          **/*.yaml;**/*.yml      |                  | Birch.yml;alder.yaml;north/cedar.yaml;north/dale/site.yaml;types/device-types.yaml
          *.yaml                  |                  | alder.yaml
          **/*.yaml               | north/**         | alder.yaml;types/device-types.yaml
          **/*.yaml               | **/site.yaml     | alder.yaml;north/cedar.yaml;types/device-types.yaml
          north/                  |                  | north/cedar.yaml;north/dale/site.yaml
          north\\**               |                  | north/cedar.yaml;north/dale/site.yaml
          ' **/c*.yaml'           | ' **/dale/** '   | north/cedar.yaml
          birch.yml               |                  | ''
          %regex[(alder|Birch).*ml] |                | Birch.yml;alder.yaml
          **                      | **/*.y*          | read-me.txt
          """)
  void patternsSayWhichFilesAreSites(String includes, String excludes, String found)
      throws UserError {
    assertThat(find(split(includes), split(excludes))).isEqualTo(split(found));
  }

  private static List<String> split(String text) {
    return text == null || text.isEmpty() ? List.of() : Arrays.asList(text.split(";"));
  }

  @Test
  void settingsInTheFolderAreNoSites() throws IOException, UserError {
    Path reached = Files.createSymbolicLink(temporary.resolve("link"), sites.resolve("types"));
    assertThat(find(List.of("t*/*", "*.yaml"), List.of(), reached.resolve("device-types.yaml")))
        .containsExactly("alder.yaml");
  }

  @Test
  void aFileIsFoundOnceAndByItsOwnName() throws Exception {
    List<String> before = find(USUAL, List.of());
    Files.createSymbolicLink(sites.resolve("a-link.yaml"), sites.resolve("alder.yaml"));
    Files.createSymbolicLink(sites.resolve("a-north"), sites.resolve("north"));
    Files.createSymbolicLink(sites.resolve("north/again"), sites);
    Files.createSymbolicLink(sites.resolve("north/dale/up"), Path.of(".."));
    assertThat(find(USUAL, List.of())).isEqualTo(before);
  }

  /** As where a folder of data is put in place by one link, and the names lead through it. */
  @Test
  void linksInsideTheFolderAreFollowedAlsoToWhatIsHidden() throws Exception {
    Files.createSymbolicLink(sites.resolve("x-there.yaml"), Path.of(".elm.yaml"));
    Files.createSymbolicLink(sites.resolve("x-live"), Path.of(".fern"));
    Files.createSymbolicLink(sites.resolve(".x-hidden"), Path.of("north"));
    assertThat(find(List.of("x-*.yaml", "x-*/*.yaml"), List.of()))
        .containsExactly("x-live/gorse.yaml", "x-there.yaml");
  }

  /** Folders that all link to each other have more ways through them than anybody can walk. */
  @Test
  void manyCirclesOfLinksEnd() throws Exception {
    for (int i = 0; i < 20; i++) {
      Path folder = Files.createDirectory(sites.resolve("r" + i));
      Files.writeString(folder.resolve("oak.yaml"), "");
      for (int j = 0; j < 20; j++) {
        Files.createSymbolicLink(folder.resolve("to" + j), Path.of("../r" + j));
      }
    }
    assertThat(find(List.of("r*/*.yaml"), List.of()))
        .hasSize(20)
        .allMatch(name -> name.matches("r[0-9]+/oak\\.yaml"));
  }

  @Test
  void linksThatLeadOutAreRefused() throws Exception {
    Path elsewhere = Files.createDirectory(temporary.resolve("elsewhere"));
    Path oak = Files.writeString(elsewhere.resolve("oak.yaml"), "format: 1");
    Files.createSymbolicLink(sites.resolve("x-file.yaml"), oak);
    Files.createSymbolicLink(sites.resolve("x-folder"), elsewhere);
    Files.createSymbolicLink(sites.resolve("x-up"), Path.of(".."));
    Files.createSymbolicLink(sites.resolve("x-no-site.txt"), oak);
    Files.createSymbolicLink(sites.resolve(".x-hidden"), elsewhere);
    assertThat(find(List.of("x-*.yaml", "x-*/*.yaml"), List.of()))
        .containsExactly("x-file.yaml refused", "x-folder refused", "x-up refused");
    assertThat(found(USUAL, List.of("x-up/", "x-folder/**", "[a-z]*.y*", "north/**", "types/**")))
        .filteredOn(file -> file.refused() != null)
        .singleElement()
        .satisfies(
            file ->
                assertThat(file.refused())
                    .hasMessage(
                        "it is a link that leads out of the folder of sites, to "
                            + oak.toRealPath()
                            + ": put a copy in its place, or exclude it"));
  }

  /** A pattern for files says nothing of the folders that they lie in. */
  @ParameterizedTest
  @CsvSource({
    "**/a*, x-folder refused",
    "**/*.yml, x-folder refused",
    "x-folder/*, x-folder refused",
    "x-folder, ''",
    "x-folder/, ''",
    "x-folder/**/*, ''",
    "**, ''",
    "**/*, ''",
    "**/x-folder/**, ''"
  })
  void aLinkThatLeadsOutIsLeftOutOnlyWhereAllBehindItIs(String exclude, String found)
      throws Exception {
    Path elsewhere = Files.createDirectory(temporary.resolve("elsewhere"));
    Files.createSymbolicLink(sites.resolve("x-folder"), elsewhere);
    assertThat(find(List.of("x-folder/*"), List.of(exclude))).isEqualTo(split(found));
  }

  /** The name decides, as where a link says which of several states is the one that counts. */
  @Test
  void aLinkIntoAnExcludedFolderIsFollowed() throws Exception {
    Files.createSymbolicLink(sites.resolve("x-current"), Path.of("north/dale"));
    assertThat(find(List.of("**/site.yaml"), List.of("north/**")))
        .containsExactly("x-current/site.yaml");
  }

  /** Whatever the patterns say: it may be half of a site. */
  @Test
  void whatIsBeingWrittenIsNoSite() throws Exception {
    Path site = sites.resolve("oak.yaml");
    AtomicFile.write(
        site,
        out ->
            assertThat(find(List.of("*", "*.part"), List.of()))
                .containsExactly("Birch.yml", "alder.yaml", "alder.yaml~", "read-me.txt"));
    assertThat(find(List.of("*.yaml"), List.of())).containsExactly("alder.yaml", "oak.yaml");
  }

  /** Another run may write into the folder at the time. */
  @Test
  void whatGoesDuringTheSearchIsNotThere() throws Exception {
    List<String> before = find(USUAL, List.of());
    ExecutorService pool = Executors.newSingleThreadExecutor();
    try {
      Future<?> writer =
          pool.submit(
              () -> {
                for (int time = 0; time < 3000; time++) {
                  Path going = Files.createDirectory(sites.resolve("going" + time));
                  Files.delete(Files.createFile(going.resolve("going.txt")));
                  Files.delete(going);
                }
                return null;
              });
      while (!writer.isDone()) {
        assertThat(find(USUAL, List.of())).isEqualTo(before);
      }
      writer.get();
    } finally {
      pool.shutdown();
    }
  }

  @Test
  void settingsThatALinkLeadsToAreNoSites() throws Exception {
    Path types = Files.writeString(temporary.resolve("device-types.yaml"), "");
    Files.createSymbolicLink(sites.resolve("x-types.yaml"), types);
    assertThat(find(List.of("x-*"), List.of(), types)).isEmpty();
  }

  @Test
  void linksThatLeadNowhereAreSitesThatCannotBeRead() throws Exception {
    Files.createSymbolicLink(sites.resolve("y-lost.yaml"), sites.resolve("no-such-file"));
    Files.createSymbolicLink(sites.resolve("z-itself.yaml"), sites.resolve("z-itself.yaml"));
    assertThat(find(List.of("?-*.yaml"), List.of()))
        .containsExactly("y-lost.yaml", "z-itself.yaml");
  }

  @Test
  void aFolderWithTheNameOfAFileIsAFolder() throws Exception {
    Files.createDirectory(sites.resolve("x.yaml"));
    Files.writeString(sites.resolve("x.yaml/site.yaml"), "");
    assertThat(find(List.of("x.yaml", "x.yaml/*"), List.of())).containsExactly("x.yaml/site.yaml");
  }

  @Test
  void oneFileIsASiteWhateverItIsCalled() throws Exception {
    Path file = sites.resolve("read-me.txt");
    assertThat(files(file, USUAL, List.of()).find(List.of())).containsExactly(new FoundFile(file));
  }

  @Test
  void noneIsFineOnlyWhereItIsAllowed() throws Exception {
    SiteNames none = new SiteNames(List.of("*.json", "*.toml"), List.of(), CALLED);
    assertThat(new SiteFiles(sites, none, true, CALLED).find(List.of())).isEmpty();
    assertThatThrownBy(() -> new SiteFiles(sites, none, false, CALLED).find(List.of()))
        .isInstanceOf(UserError.class)
        .hasMessage(
            "no file in "
                + sites
                + " matches *.json, *.toml: correct linter.sites, linter.includes or linter.excludes, or set"
                + " linter.allowEmpty to true");
  }

  @Test
  void theFolderItselfMayBeALink() throws IOException, UserError {
    Path link = Files.createSymbolicLink(temporary.resolve("link"), sites);
    assertThat(files(link, List.of("*.yaml"), List.of()).find(List.of()))
        .containsExactly(new FoundFile(link.resolve("alder.yaml")));
  }

  @Test
  void theFolderItselfMayHaveADotInFront() throws IOException, UserError {
    Path hidden = sites.resolve(".fern");
    assertThat(files(hidden, USUAL, List.of()).find(List.of()))
        .containsExactly(new FoundFile(hidden.resolve("gorse.yaml")));
  }

  @Test
  void aPatternThatCannotBeReadIsQuoted() {
    assertThatThrownBy(() -> find(List.of("%regex[north/(]"), List.of()))
        .isInstanceOf(UserError.class)
        .hasMessage(
            "linter.includes or linter.excludes has a pattern that cannot be read,"
                + " \"north/(\": correct it");
  }

  @Test
  void aFolderThatIsNotThereIsNamed() {
    Path missing = temporary.resolve("missing");
    assertThatThrownBy(() -> files(missing, USUAL, List.of()).find(List.of()))
        .isInstanceOf(UserError.class)
        .hasMessage(
            "linter.sites names "
                + missing
                + ", which does not exist: name the folder of the sites, or one file");
  }
}
