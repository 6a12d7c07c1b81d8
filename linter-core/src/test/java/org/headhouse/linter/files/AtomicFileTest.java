package org.headhouse.linter.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.common.jimfs.Configuration;
import com.google.common.jimfs.Jimfs;
import java.io.IOException;
import java.nio.file.FileSystem;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.xml.stream.XMLStreamException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class AtomicFileTest {
  @TempDir Path folder;

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void foldersAreMade() throws Exception {
    Path file = folder.resolve("deep/down/results.txt");
    AtomicFile.write(file, out -> out.write("all".getBytes(UTF_8)));
    assertThat(file).hasContent("all");
    assertThat(names(folder.resolve("deep/down"))).containsExactly("results.txt");
  }

  @Test
  void readersSeeTheOldFileUntilTheNewOneIsWhole() throws Exception {
    Path file = Files.writeString(folder.resolve("results.txt"), "old");
    List<String> seen = new ArrayList<>();
    AtomicFile.write(
        file,
        out -> {
          out.write("new".getBytes(UTF_8));
          out.flush();
          seen.add(Files.readString(file));
          seen.addAll(names(folder));
        });
    assertThat(seen).hasSize(3).startsWith("old").endsWith("results.txt");
    assertThat(seen.get(1)).matches("\\.[0-9a-f-]{36}\\.part");
    assertThat(file).hasContent("new");
    assertThat(names(folder)).containsExactly("results.txt");
  }

  /** File systems allow 255 bytes for a name. */
  @Test
  void namesMayBeAsLongAsTheFileSystemAllows() throws Exception {
    String name = "x".repeat(250) + ".yaml";
    Path file = folder.resolve(name);
    AtomicFile.writeNew(file, out -> out.write("first".getBytes(UTF_8)));
    AtomicFile.write(file, out -> out.write("old".getBytes(UTF_8)));
    FileUpdate.write(file, "old".getBytes(UTF_8), "new".getBytes(UTF_8));
    assertThat(file).hasContent("new");
    assertThat(names(folder)).containsExactly(name);
  }

  @Test
  void nothingIsLeftBehindWhereAWriterCannotGoOn() throws Exception {
    Path file = Files.writeString(folder.resolve("results.txt"), "old");
    Error failure = new StackOverflowError();
    assertThatThrownBy(
            () ->
                AtomicFile.write(
                    file,
                    out -> {
                      throw failure;
                    }))
        .isSameAs(failure);
    assertThat(file).hasContent("old");
    assertThat(names(folder)).containsExactly("results.txt");
  }

  static List<Exception> failures() {
    return List.of(
        new IOException("no space left on device"),
        new XMLStreamException("no space left on device"),
        new IllegalStateException("no space left on device"));
  }

  @ParameterizedTest
  @MethodSource("failures")
  void theOldFileStaysWhereWritingFails(Exception failure) throws Exception {
    Path file = Files.writeString(folder.resolve("results.txt"), "old");
    assertThatThrownBy(
            () ->
                AtomicFile.write(
                    file,
                    out -> {
                      out.write("half".getBytes(UTF_8));
                      throw failure;
                    }))
        .isInstanceOf(UserError.class)
        .hasMessageStartingWith(file + " cannot be written: ")
        .hasMessageEndingWith("no space left on device")
        .hasCause(failure);
    assertThat(file).hasContent("old");
    assertThat(names(folder)).containsExactly("results.txt");
  }

  @Test
  void whatAFormatWrapsIsReportedInPlainWords() {
    Path file = folder.resolve("results.txt");
    assertThatThrownBy(
            () ->
                AtomicFile.write(
                    file,
                    out -> {
                      throw new IllegalStateException(new IOException("File too large"));
                    }))
        .isInstanceOf(UserError.class)
        .hasMessage(file + " cannot be written: File too large");
  }

  @Test
  void aFileInTheWayIsNamed() throws Exception {
    Path inTheWay = Files.writeString(folder.resolve("target"), "");
    assertThatThrownBy(() -> AtomicFile.write(inTheWay.resolve("results.txt"), out -> {}))
        .isInstanceOf(UserError.class)
        .hasMessage(
            inTheWay.resolve("results.txt")
                + " cannot be written: "
                + inTheWay
                + ": there is a file where a folder is needed");
  }

  @Test
  void aNewFileReplacesNone() throws Exception {
    Path file = folder.resolve("sites/elm-row.yaml");
    AtomicFile.writeNew(file, out -> out.write("first".getBytes(UTF_8)));
    assertThatThrownBy(() -> AtomicFile.writeNew(file, out -> out.write("second".getBytes(UTF_8))))
        .isInstanceOf(UserError.class)
        .hasMessage(file + " exists already, and was not changed");
    assertThat(file).hasContent("first");
    assertThat(names(folder.resolve("sites"))).containsExactly("elm-row.yaml");
  }

  @Test
  void theFolderMayBeALink() throws Exception {
    Path real = Files.createDirectory(folder.resolve("real"));
    Path link = Files.createSymbolicLink(folder.resolve("link"), real);
    AtomicFile.write(link.resolve("results.txt"), out -> out.write('x'));
    assertThat(names(real)).containsExactly("results.txt");
  }

  /** Build servers read the results as another user. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void theFileIsAsOpenAsAnyOther() throws Exception {
    Path other = Files.writeString(folder.resolve("other.txt"), "");
    Path file = folder.resolve("results.txt");
    AtomicFile.write(file, out -> {});
    assertThat(Files.getPosixFilePermissions(file)).isEqualTo(Files.getPosixFilePermissions(other));
  }

  @Test
  void aFolderInTheWayStays() throws Exception {
    Path file = Files.createDirectory(folder.resolve("results.txt"));
    assertThatThrownBy(() -> AtomicFile.write(file, out -> out.write('x')))
        .isInstanceOf(UserError.class)
        .hasMessage(
            file + " cannot be written: " + file + ": there is a folder where a file is needed");
    assertThat(file).isEmptyDirectory();
    assertThat(names(folder)).containsExactly("results.txt");
  }

  @Test
  void aFileThatComesWhileANewOneIsWrittenStays() throws Exception {
    Path file = folder.resolve("elm-row.yaml");
    assertThatThrownBy(
            () ->
                AtomicFile.writeNew(
                    file,
                    out -> {
                      out.write("mine".getBytes(UTF_8));
                      Files.writeString(file, "theirs");
                    }))
        .isInstanceOf(UserError.class)
        .hasMessage(file + " exists already, and was not changed");
    assertThat(file).hasContent("theirs");
    assertThat(names(folder)).containsExactly("elm-row.yaml");
  }

  /** A disk of sixteen blocks. */
  @Test
  void theOldFileStaysWhereTheDiskIsFull() throws Exception {
    try (FileSystem disk =
        Jimfs.newFileSystem(
            Configuration.unix().toBuilder().setBlockSize(512).setMaxSize(16 * 512).build())) {
      Path file = Files.writeString(disk.getPath("/work/results.txt"), "old");
      assertThatThrownBy(() -> AtomicFile.write(file, out -> out.write(new byte[100_000])))
          .isInstanceOf(UserError.class)
          .hasMessageMatching(Pattern.quote(file + " cannot be written: ") + ".*out of disk space");
      assertThatThrownBy(() -> FileUpdate.write(file, "old".getBytes(UTF_8), new byte[100_000]))
          .isInstanceOf(UserError.class)
          .hasMessageMatching(Pattern.quote(file + " cannot be written: ") + ".*out of disk space");
      assertThat(Files.readString(file)).isEqualTo("old");
      assertThat(names(disk.getPath("/work"))).containsExactly("results.txt");
    }
  }

  /** There is no moment without the file, or with half of it. */
  @Test
  void manyWritersAndAReaderMeetOnlyWholeFiles() throws Exception {
    Path file = Files.writeString(folder.resolve("results.txt"), "0".repeat(50_000));
    ExecutorService pool = Executors.newFixedThreadPool(4);
    try {
      List<Future<?>> writers = new ArrayList<>();
      for (int writer = 1; writer <= 3; writer++) {
        byte[] content = String.valueOf(writer).repeat(50_000).getBytes(UTF_8);
        writers.add(
            pool.submit(
                () -> {
                  for (int time = 0; time < 200; time++) {
                    AtomicFile.write(file, out -> out.write(content));
                  }
                  return null;
                }));
      }
      while (!writers.stream().allMatch(Future::isDone)) {
        assertThat(Files.readString(file)).matches("(.)\\1{49999}");
      }
      for (Future<?> writer : writers) {
        writer.get();
      }
    } finally {
      pool.shutdown();
    }
    assertThat(names(folder)).containsExactly("results.txt");
  }
}
