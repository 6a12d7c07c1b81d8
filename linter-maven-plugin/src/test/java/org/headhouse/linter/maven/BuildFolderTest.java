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
