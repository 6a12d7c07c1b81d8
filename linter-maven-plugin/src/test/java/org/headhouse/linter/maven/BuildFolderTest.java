package org.headhouse.linter.maven;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BuildFolderTest {
  @TempDir File base;

  @ParameterizedTest
  @CsvSource({
    "sites/alder.yaml, sites/alder.yaml",
    "./sites/../sites/alder.yaml, sites/alder.yaml",
    "'', .",
  })
  void pathsInsideAreShownFromTheFolder(String path, String shown) {
    BuildFolder folder = BuildFolder.of(base);
    assertThat(folder.shown(Path.of(path))).isEqualTo(shown);
    assertThat(folder.shown(new File(base, path).toPath())).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"../other/alder.yaml, other/alder.yaml", "sites/../../alder.yaml, alder.yaml"})
  void pathsOutsideAreShownWhole(String path, String fromAbove) {
    assertThat(BuildFolder.of(base).shown(new File(base, path).toPath()))
        .isEqualTo(base.getParentFile().toPath().resolve(fromAbove).toString().replace('\\', '/'));
  }

  @ParameterizedTest
  @CsvSource({
    "target/linter, target/linter",
    "build/linter, build/linter",
    // What Maven 3 and 4 give without a project.
    "${project.basedir}/target/linter, target/linter",
  })
  void outputLiesInTheFolder(String configured, String expected) {
    BuildFolder folder = BuildFolder.of(base);
    Path output = base.toPath().resolve(expected);
    assertThat(folder.output(new File(configured))).isEqualTo(output);
    assertThat(folder.output(new File(base, configured))).isEqualTo(output);
  }
}
