package org.headhouse.linter;

import static java.nio.file.StandardOpenOption.CREATE_NEW;
import static java.nio.file.StandardOpenOption.WRITE;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Notification;
import org.headhouse.linter.source.Limits;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A file that cannot be read is told of, and the others are checked. */
class UnreadableFilesTest {
  @TempDir private Path folder;

  private Path make(String kind) throws IOException {
    Path file = folder.resolve(kind + ".yaml");
    switch (kind) {
      case "folder" -> Files.createDirectory(file);
      case "loop" -> Files.createSymbolicLink(file, file);
      case "dangling" -> Files.createSymbolicLink(file, folder.resolve("nowhere"));
      case "closed" -> {
        Files.writeString(file, Example.SITE);
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeThat(Files.isReadable(file)).as("the user may read all files").isFalse();
      }
      case "missing" -> {}
      default -> throw new IllegalArgumentException(kind);
    }
    return file;
  }

  @ParameterizedTest
  @CsvSource({
    "missing, it does not exist",
    "dangling, it does not exist",
    "closed, permission denied",
    "folder, it is a folder"
  })
  void isTold(String kind, String reason) throws IOException {
    Path bad = make(kind);
    Path good =
        Files.writeString(folder.resolve("example.yaml"), Example.with("address: 3", "address: 4"));
    CheckReport report = Checks.linter().checkFiles(List.of(bad, good));
    assertThat(report.notifications())
        .containsExactly(
            new Notification(
                Level.ERROR, "the file cannot be read: " + reason, bad.toString(), null));
    assertThat(Checks.places(report)).containsExactly("25:14 address.gap");
    assertThat(report.files()).isEqualTo(2);
  }

  /** The reason is the system's. */
  @Test
  void aSymbolicLinkInACircleIsTold() throws IOException {
    Path loop = make("loop");
    assertThat(Checks.linter().checkFiles(List.of(loop)).notifications())
        .singleElement()
        .satisfies(
            one -> {
              assertThat(one.file()).isEqualTo(loop.toString());
              assertThat(one.text())
                  .startsWith("the file cannot be read: ")
                  .doesNotContain(loop.toString());
            });
  }

  @Test
  void aReaderThatFailsIsTold() {
    Stream<SiteInput> inputs =
        Stream.of(
            input(new IOException("the share is gone")),
            input(new IOException()),
            input(new FileSystemException("x.yaml", null, "stale handle")));
    assertThat(Checks.linter().check(inputs).notifications())
        .extracting(Notification::text)
        .containsExactly(
            "the file cannot be read: the share is gone",
            "the file cannot be read: IOException",
            "the file cannot be read: stale handle");
  }

  private static SiteInput input(IOException failure) {
    return new SiteInput(
        "example.yaml",
        most -> {
          throw failure;
        });
  }

  /** Settings are wanted by name, so a linter without them is not made. */
  @Test
  void settingsThatCannotBeReadEndTheBuilding() {
    Path missing = folder.resolve("no.yaml");
    assertThatThrownBy(() -> SiteLinter.builder().policy(missing).build())
        .isInstanceOf(NoSuchFileException.class);
    assertThatThrownBy(() -> SiteLinter.builder().deviceTypes(missing).build())
        .isInstanceOf(NoSuchFileException.class);
  }

  @Test
  void aFileOverTheBudgetIsNotReadWhole() throws IOException {
    Path large = folder.resolve("large.yaml");
    try (var channel = Files.newByteChannel(large, CREATE_NEW, WRITE)) {
      channel.position(3L << 30);
      channel.write(ByteBuffer.wrap(new byte[1]));
    }
    assertThat(SiteInput.file(large).content().read(1_000)).hasSize(1_000);
    assertThat(Checks.places(Checks.linter().checkFiles(List.of(large))))
        .containsExactly("1:1 file.too-large");
    List<Integer> asked = new ArrayList<>();
    SiteLinter.builder()
        .limits(new Limits(500, 64, 1_000))
        .build()
        .check(
            Stream.of(
                new SiteInput(
                    "example.yaml",
                    most -> {
                      asked.add(most);
                      return new byte[most];
                    })));
    assertThat(asked).containsExactly(501);
  }

  @ParameterizedTest
  @CsvSource({"-1, ''", "0, ''", "1, 1:1 file.too-large"})
  void theBudgetIsExact(int over, String expected) throws IOException {
    int size = Example.SITE.length() + 20;
    SiteLinter linter = SiteLinter.builder().limits(new Limits(size, 64, 1_000)).build();
    String text = Example.SITE + "#" + " ".repeat(19 + over);
    assertThat(String.join(" ", Checks.places(linter.checkText("example.yaml", text))))
        .isEqualTo(expected);
  }
}
