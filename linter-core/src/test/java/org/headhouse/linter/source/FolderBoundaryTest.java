package org.headhouse.linter.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FolderBoundaryTest {
  @TempDir Path folder;

  @BeforeEach
  void makeRepository() throws IOException {
    Files.createDirectories(folder.resolve("repository/.git"));
    Files.writeString(folder.resolve("repository/.git/config"), "secret");
    Files.createDirectories(folder.resolve("repository/sites/east"));
    Files.writeString(folder.resolve("repository/linter.yaml"), "format: 1");
    Files.writeString(folder.resolve("secret.yaml"), "secret");
    Files.createDirectories(folder.resolve("other/.git"));
    link("repository/out.yaml", "../secret.yaml");
    link("repository/in.yaml", "linter.yaml");
    link("repository/config.yaml", ".git/config");
    link("repository/nowhere.yaml", "../none.yaml");
    link("repository/elsewhere", "../other");
    link("repository/up", "..");
  }

  private void link(String name, String target) throws IOException {
    Files.createSymbolicLink(folder.resolve(name), Path.of(target));
  }

  @ParameterizedTest
  @CsvSource({
    "linter.yaml, true",
    "none.yaml, true",
    "sites/east/none/none.yaml, true",
    "in.yaml, true",
    "out.yaml, false",
    "config.yaml, false",
    ".git/config, false",
    "sites/../.GIT/config, false",
    "nowhere.yaml, false",
    "../secret.yaml, false",
    "../none.yaml, false",
    "up/secret.yaml, false",
    "up/none.yaml, false",
    "elsewhere/linter.yaml, false",
  })
  void filesOfTheRepository(String file, boolean inside) {
    Path repository = folder.resolve("repository");
    assertThat(
            FolderBoundary.around(repository.resolve("sites")).contains(repository.resolve(file)))
        .isEqualTo(inside);
  }

  /** A repository that a link leads to is not the one that has the link. */
  @Test
  void linksDoNotMakeARepository() throws IOException {
    Path repository = folder.resolve("repository");
    assertThat(FolderBoundary.around(repository.resolve("elsewhere")).root())
        .isEqualTo(repository.toRealPath());
  }

  @Test
  void withoutGitItIsTheFolderThatHoldsThePath() throws IOException {
    Files.createDirectories(folder.resolve("plain/sites"));
    assertThat(FolderBoundary.around(folder.resolve("plain/sites")).root())
        .isEqualTo(folder.resolve("plain").toRealPath());
  }
}
