package org.headhouse.linter.run;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.SiteLinter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptFileTest {
  private static final String NAME = "checked-sites.cache";

  @TempDir private Path folder;
  private final RecordingConsole console = new RecordingConsole();

  private static void check(KeptFile kept) throws IOException {
    SiteLinter.builder()
        .keepingOutcomes(kept.outcomes())
        .build()
        .checkText("sites/nothing.yaml", "format: 1");
  }

  private KeptFile run(KeptFile kept) throws IOException {
    check(kept);
    kept.save(console);
    return kept;
  }

  @Test
  void theNextRunFindsWhatTheLastOneLeft() throws IOException {
    assertThat(run(KeptFile.in(folder)).outcomes().isChanged()).isTrue();
    byte[] first = Files.readAllBytes(folder.resolve(NAME));
    assertThat(run(KeptFile.in(folder)).outcomes().isChanged()).isFalse();
    assertThat(run(KeptFile.anew(folder)).outcomes().isChanged()).isTrue();
    assertThat(folder.resolve(NAME)).hasBinaryContent(first);
    assertThat(list()).containsExactly(NAME);
    assertThat(console.lines()).isEmpty();
  }

  @Test
  void aForeignFileIsReplaced() throws IOException {
    Files.writeString(folder.resolve(NAME), "something else of the same name, and long enough too");
    assertThat(run(KeptFile.in(folder)).outcomes().isChanged()).isTrue();
    assertThat(run(KeptFile.in(folder)).outcomes().isChanged()).isFalse();
  }

  /** It would fill the heap; here it is a hole in the disk. */
  @Test
  void aFileLargerThanAnyIsNotRead() throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(folder.resolve(NAME).toFile(), "rw")) {
      file.setLength(Integer.MAX_VALUE + 1L);
    }
    assertThat(run(KeptFile.in(folder)).outcomes().isChanged()).isTrue();
    assertThat(folder.resolve(NAME)).content(ISO_8859_1).hasSizeLessThan(10_000);
  }

  /** The check itself is done, and its results are told. */
  @Test
  void whereNothingCanBeKeptTheRunGoesOn() throws IOException {
    Files.createDirectory(folder.resolve(NAME));
    run(KeptFile.in(folder));
    assertThat(console.lines())
        .singleElement()
        .asString()
        .contains(NAME, "; the next run checks all sites again");
  }

  private List<String> list() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
