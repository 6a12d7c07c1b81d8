package org.headhouse.linter.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StalePartsTest {
  @TempDir Path folder;

  @ParameterizedTest
  @CsvSource({
    ".0f8fad5b-d9cb-469f-a165-70867728950e.part, 25, false",
    ".0f8fad5b-d9cb-469f-a165-70867728950e.part, 23, true",
    ".mine.part, 25, true",
    "0f8fad5b-d9cb-469f-a165-70867728950e.part, 25, true",
    "site.yaml, 25, true",
  })
  void onlyWhatARunLeftBehindGoes(String name, int hours, boolean stays) throws IOException {
    Path file = Files.writeString(folder.resolve(name), "half");
    Instant written = Instant.now().minus(hours, ChronoUnit.HOURS);
    Files.setLastModifiedTime(file, FileTime.from(written));
    StaleParts.sweep(folder);
    assertThat(Files.exists(file)).isEqualTo(stays);
  }

  /** Its name is the one that a write has. */
  @Test
  void knowsTheNamesOfParts() throws IOException {
    Path part = Files.writeString(AtomicFile.beside(folder.resolve("a.txt")), "half");
    Files.setLastModifiedTime(part, FileTime.from(Instant.now().minus(2, ChronoUnit.DAYS)));
    StaleParts.sweep(folder);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void aFolderThatIsNotThereIsLeft() {
    StaleParts.sweep(folder.resolve("none"));
    assertThat(folder).isEmptyDirectory();
  }
}
