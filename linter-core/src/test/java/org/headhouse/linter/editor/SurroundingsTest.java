package org.headhouse.linter.editor;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import org.headhouse.linter.Example;
import org.headhouse.linter.files.BaseFolder;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.run.SettingsRequest;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The linter of a text is the one of the files that apply to it now. */
class SurroundingsTest {
  private static final String TYPES = "format: 1\ndevice-types:\n  - {id: eight-way}\n";
  private static final String TEXT =
      Example.with("address: 2\n", "address: 2\n    device-type: three-way\n");

  @TempDir private Path folder;

  /**
   * The file is written the n-th time that it is looked for: before it is read, after it was read,
   * or later. What is found in the end is what it then has.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3})
  void whatIsWrittenMeanwhileIsReadTheNextTime(int moment) throws Exception {
    Path sites = Files.createDirectory(folder.resolve("sites"));
    Path types = Files.writeString(folder.resolve("device-types.yaml"), TYPES);
    OpenText text = OpenText.of(sites.resolve("example.yaml").toUri().toString(), 1, TEXT);
    Surroundings surroundings =
        new Surroundings(
            new SettingsRequest(sites, null, null, new BaseFolder(folder), "--"::concat));
    AtomicInteger looked = new AtomicInteger();
    Function<Path, @Nullable OpenText> open =
        file -> {
          if (looked.incrementAndGet() == moment) {
            write(types);
          }
          return null;
        };
    assertThat(surroundings.of(text, open)).isNotNull();
    if (looked.get() < moment) {
      write(types);
    }
    assertThat(surroundings.of(text, file -> null).linter().checkText("example.yaml", TEXT))
        .satisfies(report -> assertThat(report.passes(Level.ERROR)).isTrue());
  }

  private static void write(Path types) {
    try {
      Files.writeString(types, TYPES + "  - {id: three-way}\n");
    } catch (IOException impossible) {
      throw new UncheckedIOException(impossible);
    }
  }

  @Test
  void theTypeIsMissingAtFirst() throws Exception {
    Path sites = Files.createDirectory(folder.resolve("sites"));
    Files.writeString(folder.resolve("device-types.yaml"), TYPES);
    OpenText text = OpenText.of(sites.resolve("example.yaml").toUri().toString(), 1, TEXT);
    Surroundings surroundings =
        new Surroundings(
            new SettingsRequest(sites, null, null, new BaseFolder(folder), "--"::concat));
    assertThat(surroundings.of(text, file -> null).linter().checkText("example.yaml", TEXT))
        .satisfies(report -> assertThat(report.passes(Level.ERROR)).isFalse());
  }
}
