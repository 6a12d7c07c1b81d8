package org.headhouse.linter.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

class CleanSitesFileTest {
  private static final byte[] KEY = new byte[32];

  @TempDir private Path folder;

  private Path file() {
    return folder.resolve("clean-sites.cache");
  }

  private CleanSitesFile open() {
    return new CleanSitesFile(folder, KEY, "version 1\n");
  }

  private static void run(CleanSitesFile clean, String... names) throws IOException {
    SiteLinter linter = SiteLinter.builder().cleanFiles(clean::open).build();
    // The same id twice is a fault of both together, and not of either file.
    linter.check(Stream.of(names).map(name -> SiteInput.text(name, Example.SITE)));
    clean.save();
  }

  /** What a run left, where it found nothing that it could use. */
  private byte[] cold() throws IOException {
    Files.deleteIfExists(file());
    run(open(), "one/example.yaml");
    return Files.readAllBytes(file());
  }

  @Test
  void itIsWrittenOnlyWhereItDiffers() throws IOException {
    byte[] first = cold();
    FileTime longAgo = FileTime.fromMillis(0);
    Files.setLastModifiedTime(file(), longAgo);
    run(open(), "one/example.yaml");
    assertThat(Files.getLastModifiedTime(file())).isEqualTo(longAgo);
    assertThat(file()).hasBinaryContent(first);
    run(open(), "two/example.yaml");
    assertThat(Files.readAllBytes(file())).isNotEqualTo(first);
    assertThat(list()).containsExactly("clean-sites.cache");
  }

  /** A run with rules of other jars does not use it. */
  @Test
  void aRunThatDoesNotUseItLeavesItAlone() throws IOException {
    byte[] first = cold();
    open().save();
    assertThat(file()).hasBinaryContent(first);
  }

  @Test
  void oneOfAnotherVersionOrUserIsReplaced() throws IOException {
    byte[] mine = cold();
    byte[] key = KEY.clone();
    key[0] = 1;
    run(new CleanSitesFile(folder, key, "version 1\n"), "one/example.yaml");
    assertThat(Files.readAllBytes(file())).isNotEqualTo(mine);
    run(new CleanSitesFile(folder, KEY, "version 2\n"), "one/example.yaml");
    assertThat(Files.readAllBytes(file())).isNotEqualTo(mine);
    run(open(), "one/example.yaml");
    assertThat(file()).hasBinaryContent(mine);
  }

  @Test
  void aForeignFileIsReplaced() throws IOException {
    byte[] expected = cold();
    Files.writeString(file(), "something else of the same name, and long enough too");
    run(open(), "one/example.yaml");
    assertThat(file()).hasBinaryContent(expected);
  }

  /** It would fill the heap; here it is a hole in the disk. */
  @Test
  void aFileLargerThanAnyIsNotRead() throws IOException {
    byte[] expected = cold();
    try (RandomAccessFile large = new RandomAccessFile(file().toFile(), "rw")) {
      large.setLength(1L << 40);
    }
    run(open(), "one/example.yaml");
    assertThat(file()).hasBinaryContent(expected);
  }

  /** The link goes, and what it leads to stays. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aLinkIsReplacedAndNotFollowed() throws IOException {
    byte[] expected = cold();
    Path other = Files.writeString(folder.resolve("precious.txt"), "precious");
    for (String target : List.of("precious.txt", "nowhere", ".", "/dev/zero")) {
      Files.delete(file());
      Files.createSymbolicLink(file(), Path.of(target));
      run(open(), "one/example.yaml");
      assertThat(Files.isSymbolicLink(file())).as(target).isFalse();
      assertThat(file()).hasBinaryContent(expected);
      assertThat(other).hasContent("precious");
      assertThat(folder.resolve("nowhere")).doesNotExist();
    }
  }

  /** To open it would wait for somebody who writes. */
  @Test
  @DisabledOnOs(OS.WINDOWS)
  void aPipeIsReplaced() throws Exception {
    byte[] expected = cold();
    Files.delete(file());
    Process made = new ProcessBuilder("mkfifo", file().toString()).start();
    assertThat(made.waitFor(10, TimeUnit.SECONDS)).isTrue();
    run(open(), "one/example.yaml");
    assertThat(file()).hasBinaryContent(expected);
  }

  /** The check itself is done, and its results are told. */
  @Test
  void whereNothingCanBeKeptTheRunGoesOn() throws IOException {
    Files.createDirectory(file());
    run(open(), "one/example.yaml");
    assertThat(file()).isEmptyDirectory();
    assertThat(list()).containsExactly("clean-sites.cache");
  }

  /** Each writes the whole file or nothing, whatever another wrote since it began. */
  @Test
  void runsSideBySideDoNotDisturbEachOther() throws IOException {
    cold();
    CleanSitesFile early = open();
    CleanSitesFile late = open();
    run(early, "one/example.yaml", "two/example.yaml");
    byte[] expected = Files.readAllBytes(file());
    run(late, "one/example.yaml");
    run(open(), "one/example.yaml", "two/example.yaml");
    assertThat(file()).hasBinaryContent(expected);
    run(open(), "one/example.yaml");
    run(early, "one/example.yaml", "two/example.yaml");
    assertThat(file()).hasBinaryContent(expected);
  }

  /** Code that somebody works on may be another one in a moment, under the same name. */
  @Test
  void whereTheLinterIsNotInAJarNothingIsKept() {
    assertThat(CleanSitesFile.in(folder)).isNull();
  }

  private List<String> list() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).toList();
    }
  }
}
