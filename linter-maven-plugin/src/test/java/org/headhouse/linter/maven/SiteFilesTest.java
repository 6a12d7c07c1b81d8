package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SiteFilesTest {
  private static final List<String> USUAL = List.of("**/*.yaml", "**/*.yml");

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

  private List<String> names(List<Path> files) {
    return files.stream().map(file -> sites.relativize(file).toString()).toList();
  }

  private List<String> find(List<String> includes, List<String> excludes, Path... others)
      throws MojoExecutionException {
    return names(new SiteFiles(sites, new SiteNames(includes, excludes), List.of(others)).find());
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
      throws MojoExecutionException {
    assertThat(find(split(includes), split(excludes))).isEqualTo(split(found));
  }

  private static List<String> split(String text) {
    return text == null || text.isEmpty() ? List.of() : Arrays.asList(text.split(";"));
  }

  @Test
  void settingsInTheFolderAreNoSites() throws IOException, MojoExecutionException {
    Path reached = Files.createSymbolicLink(temporary.resolve("link"), sites.resolve("types"));
    assertThat(find(List.of("t*/*", "*.yaml"), List.of(), reached.resolve("device-types.yaml")))
        .containsExactly("alder.yaml");
  }

  @Test
  void linksToFoldersAreFollowedUntilTheyLeadBack() throws IOException, MojoExecutionException {
    List<String> before = find(USUAL, List.of());
    Path elsewhere = Files.createDirectory(temporary.resolve("elsewhere"));
    Files.writeString(elsewhere.resolve("oak.yaml"), "format: 1");
    Files.createSymbolicLink(sites.resolve("north/again"), sites);
    Files.createSymbolicLink(sites.resolve("leased.yaml"), elsewhere);
    assertThat(find(USUAL, List.of()))
        .containsAll(before)
        .contains("leased.yaml/oak.yaml")
        .hasSize(before.size() + 1);
  }

  @Test
  void linksToFilesAreSitesWhereverTheyLead() throws IOException, MojoExecutionException {
    Files.createSymbolicLink(sites.resolve("x-there.yaml"), sites.resolve("alder.yaml"));
    Files.createSymbolicLink(sites.resolve("y-lost.yaml"), sites.resolve("no-such-file"));
    Files.createSymbolicLink(sites.resolve("z-itself.yaml"), sites.resolve("z-itself.yaml"));
    assertThat(find(List.of("?-*.yaml"), List.of()))
        .containsExactly("x-there.yaml", "y-lost.yaml", "z-itself.yaml");
  }

  @Test
  void theFolderItselfMayBeALink() throws IOException, MojoExecutionException {
    Path link = Files.createSymbolicLink(temporary.resolve("link"), sites);
    assertThat(new SiteFiles(link, new SiteNames(List.of("*.yaml"), List.of()), List.of()).find())
        .containsExactly(link.resolve("alder.yaml"));
  }

  @Test
  void theFolderItselfMayHaveADotInFront() throws IOException, MojoExecutionException {
    Path hidden = sites.resolve(".fern");
    assertThat(new SiteFiles(hidden, new SiteNames(USUAL, List.of()), List.of()).find())
        .containsExactly(hidden.resolve("gorse.yaml"));
  }

  @Test
  void aPatternThatCannotBeReadIsQuoted() {
    assertThatThrownBy(() -> find(List.of("%regex[north/(]"), List.of()))
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage(
            "linter.includes or linter.excludes has a pattern that cannot be read,"
                + " \"north/(\": correct it");
  }

  @Test
  void aFolderThatIsNotThereIsNamed() {
    Path missing = temporary.resolve("missing");
    assertThatThrownBy(
            () -> new SiteFiles(missing, new SiteNames(USUAL, List.of()), List.of()).find())
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage("the folder of sites cannot be read: " + missing + ": it does not exist");
  }
}
