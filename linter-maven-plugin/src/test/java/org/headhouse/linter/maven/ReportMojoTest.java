package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.apache.maven.plugin.MojoExecutionException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the goal writes, and with what slack. */
class ReportMojoTest {
  @TempDir private Path folder = Path.of("");

  @BeforeEach
  void repository() throws IOException {
    Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("sites/elm-row.yaml"), ElmRow.SITE);
    Files.writeString(
        folder.resolve("sites/fern-dell.yaml"), ElmRow.SITE.replace("site: elm-row", "site: x"));
  }

  private GoalRun run() {
    return new GoalRun(new ReportMojo(), folder);
  }

  private List<String> lines(String file) throws IOException {
    return List.of(Files.readString(folder.resolve("target").resolve(file)).split("\r\n"));
  }

  private List<String> written() throws IOException {
    try (Stream<Path> files = Files.list(folder.resolve("target"))) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void nothingButTheFilesThatAreDescribed() throws Exception {
    run().execute();
    assertThat(written())
        .containsExactly(
            "elm-row-certificate.html",
            "elm-row-faults.html",
            "elm-row-materials.html",
            "elm-row-night-card.html",
            "elm-row-van.html",
            "elm-row-visit.csv",
            "elm-row-yearly.html",
            "elm-row-zones.csv",
            "elm-row.html",
            "figures.json",
            "index.html",
            "inventory.csv",
            "materials.csv",
            "x-certificate.html",
            "x-faults.html",
            "x-materials.html",
            "x-night-card.html",
            "x-van.html",
            "x-visit.csv",
            "x-yearly.html",
            "x-zones.csv",
            "x.html");
    // Three units of each site, after the headings.
    assertThat(lines("inventory.csv")).hasSize(1 + 3 + 3);
    // 40 m and 40 m, and a tenth of them.
    assertThat(lines("materials.csv")).anyMatch(line -> line.endsWith(",80,m,88,yes,"));
  }

  @Test
  void aBundleHasTheFilesAsTheyWereWritten() throws Exception {
    run().with("bundle", true).execute();
    assertThat(written()).contains("elm-row-bundle.zip", "x-bundle.zip");
    try (ZipFile zip = new ZipFile(folder.resolve("target/elm-row-bundle.zip").toFile())) {
      assertThat(zip.stream().map(ZipEntry::getName))
          .contains("elm-row-bundle/index.html", "elm-row-bundle/SHA256SUMS.txt")
          .noneMatch(name -> name.startsWith("elm-row-bundle/x"));
      ZipEntry certificate = zip.getEntry("elm-row-bundle/elm-row-certificate.html");
      assertThat(zip.getInputStream(certificate).readAllBytes())
          .isEqualTo(Files.readAllBytes(folder.resolve("target/elm-row-certificate.html")));
    }
  }

  @Test
  void anotherSlackIsAdded() throws Exception {
    run().with("slack", "25 %").execute();
    assertThat(lines("materials.csv")).anyMatch(line -> line.endsWith(",80,m,100,yes,"));
    // A number and its unit are in an element, which keeps them on one line.
    String page = Files.readString(folder.resolve("target/elm-row-materials.html"));
    assertThat(page.replaceAll("</?span[^>]*>", "")).contains("100 m", "25 % more for slack");
  }

  @Test
  void aSlackThatIsNoneIsRefusedBeforeAnythingIsWritten() {
    assertThatThrownBy(run().with("slack", "a lot")::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage("linter.slack cannot be \"a lot\": set a percentage from 0 to 100, such as 10");
    assertThat(folder.resolve("target")).doesNotExist();
  }

  @Test
  void aFileOfSomebodyElseIsNotReplaced() throws Exception {
    Files.createDirectory(folder.resolve("target"));
    Files.writeString(folder.resolve("target/elm-row.html"), "mine");
    assertThatThrownBy(run()::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessage(
            "target/elm-row.html exists, but is not a report of this linter, and nothing is"
                + " written: move it, or name another folder");
    assertThat(written()).containsExactly("elm-row.html");
    Files.delete(folder.resolve("target/elm-row.html"));
    run().execute();
    run().execute();
  }

  /** The file that cannot be written is named, and not one that is written at the same time. */
  @Test
  void aFileThatCannotBeWrittenIsNamed() throws Exception {
    Files.createDirectories(folder.resolve("target/inventory.csv/taken"));
    assertThatThrownBy(run()::execute)
        .isInstanceOf(MojoExecutionException.class)
        .hasMessageContaining("inventory.csv cannot be written");
    assertThat(written()).doesNotContain("figures.json");
  }
}
