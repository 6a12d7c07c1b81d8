package org.headhouse.linter.files;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FileUpdateTest {
  private static final byte[] OLD = "old".getBytes(UTF_8);
  private static final byte[] NEW = "new".getBytes(UTF_8);

  @TempDir Path folder;

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"rw-------", "rw-rw-r--", "rwxr-x---"})
  @DisabledOnOs(OS.WINDOWS)
  void whoMayDoWhatStays(String permissions) throws Exception {
    Path file = Files.write(folder.resolve("site.yaml"), OLD);
    Files.setPosixFilePermissions(file, PosixFilePermissions.fromString(permissions));
    FileUpdate.write(file, OLD, NEW);
    assertThat(file).hasBinaryContent(NEW);
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(file)))
        .isEqualTo(permissions);
    assertThat(names()).containsExactly("site.yaml");
  }

  @Test
  void aLinkStaysOne() throws Exception {
    Path file = Files.write(folder.resolve("real.yaml"), OLD);
    Path link = Files.createSymbolicLink(folder.resolve("site.yaml"), Path.of("real.yaml"));
    FileUpdate.write(link, OLD, NEW);
    assertThat(link).isSymbolicLink();
    assertThat(file).isRegularFile().hasBinaryContent(NEW);
    assertThat(names()).containsExactly("real.yaml", "site.yaml");
  }

  /** It may have become larger than any array. */
  @Tag("long")
  @Test
  void whatBecameHugeMeanwhileStays() throws Exception {
    Path file = Files.write(folder.resolve("site.yaml"), OLD);
    FileUpdate.write(file, OLD, NEW);
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.write(ByteBuffer.wrap(NEW), 3L << 30);
    }
    assertThatThrownBy(() -> FileUpdate.write(file, NEW, OLD))
        .isInstanceOf(UserError.class)
        .hasMessageContaining("was changed by somebody else meanwhile");
  }

  @Test
  void whatSomebodyElseWroteMeanwhileStays() throws Exception {
    Path file = Files.writeString(folder.resolve("site.yaml"), "newer");
    assertThatThrownBy(() -> FileUpdate.write(file, OLD, NEW))
        .isInstanceOf(UserError.class)
        .hasMessage(
            file + " was changed by somebody else meanwhile, and was not written: try again");
    assertThat(file).hasContent("newer");
    assertThat(names()).containsExactly("site.yaml");
  }

  @Test
  void aFileThatIsGoneIsNamed() {
    Path file = folder.resolve("site.yaml");
    assertThatThrownBy(() -> FileUpdate.write(file, OLD, NEW))
        .isInstanceOf(UserError.class)
        .hasMessage(file + " cannot be written: " + file + ": it does not exist");
  }
}
