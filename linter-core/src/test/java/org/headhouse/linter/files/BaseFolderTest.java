package org.headhouse.linter.files;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BaseFolderTest {
  @TempDir private Path folder;

  @ParameterizedTest
  @CsvSource({
    "sites/a.yaml, sites/a.yaml",
    "./sites/../a.yaml, a.yaml",
    "'', .",
    "., .",
    "sites/.., ."
  })
  void pathsInsideAreShownFromTheFolder(String path, String shown) {
    BaseFolder base = new BaseFolder(folder);
    assertThat(base.shown(Path.of(path))).isEqualTo(shown);
    assertThat(base.shown(folder.resolve(path))).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"../other/alder.yaml, other/alder.yaml", "sites/../../alder.yaml, alder.yaml"})
  void pathsOutsideAreShownWhole(String path, String fromAbove) {
    String above = String.valueOf(folder.resolveSibling(fromAbove));
    assertThat(new BaseFolder(folder).shown(folder.resolve(path)))
        .isEqualTo(above.replace('\\', '/'));
  }

  /** Only on Windows does it part names. */
  @ParameterizedTest
  @CsvSource({"a\\b.yaml", "sites\\"})
  @DisabledOnOs(OS.WINDOWS)
  void aBackslashMayBePartOfAName(String name) {
    assertThat(new BaseFolder(folder).shown(folder.resolve(name))).isEqualTo(name);
  }
}
