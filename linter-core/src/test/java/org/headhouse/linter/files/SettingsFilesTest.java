package org.headhouse.linter.files;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SettingsFilesTest {
  @TempDir Path repository;

  private static SettingsFiles find(Path sites, @Nullable Path policy, @Nullable Path deviceTypes)
      throws UserError {
    return SettingsFiles.find(sites, policy, deviceTypes, name -> "linter." + name);
  }

  private Path file(String name) throws IOException {
    Path path = repository.resolve("a/b/" + name);
    Files.createDirectories(path.getParent());
    return Files.writeString(path, "");
  }

  /** A check without them could find nothing wrong. */
  @ParameterizedTest
  @ValueSource(strings = {"linter.yaml", "device-types.yaml", "sites/linter.yaml"})
  void whatHasTheNameAndIsNoFileIsNotPassedOver(String name) throws IOException {
    file("sites/alder.yaml");
    Path folder = Files.createDirectories(repository.resolve("a/b").resolve(name));
    assertThatThrownBy(() -> find(repository.resolve("a/b/sites"), null, null))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith(
            folder + " is not a file: put one in its place, or name another by");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      nullValues = "nothing",
      textBlock =
          """
          # checked                | there are                                   | found
          sites                    |                                             | nothing
          sites                    | linter.yaml                                 | linter.yaml
          sites                    | linter.yaml;sites/linter.yaml               | linter.yaml
          sites                    | sites/linter.yaml                           | sites/linter.yaml
          sites                    | ../linter.yaml                              | nothing
          sites                    | sites/alder/linter.yaml                     | nothing
          sites/alder.yaml         | linter.yaml;sites/linter.yaml               | linter.yaml
          sites/alder.yaml         | sites/linter.yaml                           | sites/linter.yaml
          sites/alder.yaml         |                                             | nothing
          sites/alder/site.yaml    | linter.yaml                                 | linter.yaml
          sites/alder/site.yaml    | linter.yaml;sites/linter.yaml               | linter.yaml
          sites/alder/site.yaml    | linter.yaml;sites/alder/linter.yaml         | linter.yaml
          sites/alder/site.yaml    | sites/alder/linter.yaml                     | sites/alder/linter.yaml
          sites/alder/site.yaml    | ../linter.yaml                              | nothing
          sites/alder.yaml         | ../linter.yaml                              | nothing
          sites/alder.yaml         | ../linter.yaml;sites/linter.yaml            | sites/linter.yaml
          ranges                   | linter.yaml;ranges/linter.yaml              | linter.yaml
          ranges/alder.yaml        | linter.yaml;ranges/linter.yaml              | linter.yaml
          ranges/alder.yaml        | ranges/linter.yaml                          | ranges/linter.yaml
          ranges/alder/site.yaml   | linter.yaml;ranges/linter.yaml              | linter.yaml
          ranges/alder.yaml        | .git;../linter.yaml;ranges/linter.yaml      | ranges/linter.yaml
          """)
  void thePolicyLiesBesideTheFolderOfSites(
      String checked, @Nullable String there, @Nullable String found) throws Exception {
    file("sites/alder.yaml");
    file("sites/alder/site.yaml");
    file("ranges/alder.yaml");
    file("ranges/alder/site.yaml");
    for (String name : there == null ? new String[0] : there.split(";")) {
      file(name);
    }
    Path base = repository.resolve("a/b");
    SettingsFiles settings = find(base.resolve(checked), null, null);
    assertThat(settings.policy()).isEqualTo(found == null ? null : base.resolve(found));
    assertThat(settings.deviceTypes()).isNull();
    assertThat(settings.all()).isEqualTo(Stream.ofNullable(found).map(base::resolve).toList());
  }

  @Test
  void bothKindsAreFound() throws Exception {
    file("sites/alder.yaml");
    Path policy = file("linter.yaml");
    Path types = file("device-types.yaml");
    assertThat(find(repository.resolve("a/b/sites"), null, null))
        .isEqualTo(new SettingsFiles(policy, types));
  }

  /**
   * What lies in the folder of the site alone is not looked at where the folder of sites is known.
   */
  @Test
  void bothKindsAreThoseOfOneFolderOfSites() throws Exception {
    Path site = file("sites/alder/site.yaml");
    file("sites/alder/linter.yaml");
    Path types = file("device-types.yaml");
    SettingsFiles expected = new SettingsFiles(null, types);
    assertThat(find(repository.resolve("a/b/sites"), null, null)).isEqualTo(expected);
    assertThat(find(site, null, null)).isEqualTo(expected);
  }

  @Test
  void whatIsNamedCountsAlone() throws Exception {
    file("sites/alder.yaml");
    file("linter.yaml");
    file("device-types.yaml");
    Path policy = file("strict.yaml");
    Path types = file("maker.yaml");
    SettingsFiles settings = find(repository.resolve("a/b/sites"), policy, types);
    assertThat(settings.all()).isEqualTo(List.of(policy, types));
  }

  @Test
  void whatIsNamedMustBeAFile() throws Exception {
    file("sites/alder.yaml");
    Path folder = repository.resolve("a/b/sites");
    Path missing = repository.resolve("missing.yaml");
    assertThatThrownBy(() -> find(folder, missing, null))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith("linter.policy names " + missing + ", which is not a file");
    assertThatThrownBy(() -> find(folder, null, folder))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith("linter.deviceTypes names " + folder + ", which is not a file");
  }
}
