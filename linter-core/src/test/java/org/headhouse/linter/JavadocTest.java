package org.headhouse.linter;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.lang.module.ModuleDescriptor;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.spi.ToolProvider;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pages on what an embedding program may count on; they are left in target/javadoc. */
class JavadocTest {
  private static final Path SOURCES = Path.of("src", "main", "java");
  private static final Path PAGES = Path.of("target", "javadoc");
  private static final String JAVA = "https://docs.oracle.com/en/java/javase/17/docs/api/";

  /**
   * What internal packages have is compiled already: javadoc fails where it meets a type that it
   * has the source of and is not asked for.
   */
  private static List<String> sources() throws IOException {
    List<String> sources = new ArrayList<>();
    for (String stable : ApiTest.stablePackages()) {
      try (Stream<Path> files = Files.list(SOURCES.resolve(stable.replace('.', '/')))) {
        files.map(Path::toString).filter(file -> file.endsWith(".java")).forEach(sources::add);
      }
    }
    return sources;
  }

  /** The packages of Java that pages can lead to, in the form of its own documentation. */
  private static void writeElements(Path folder) throws IOException {
    Files.writeString(
        folder.resolve("element-list"),
        Object.class.getModule().getDescriptor().exports().stream()
            .filter(exported -> !exported.isQualified())
            .map(ModuleDescriptor.Exports::source)
            .sorted()
            .collect(Collectors.joining("\n", "module:java.base\n", "\n")));
  }

  /** All that doclint knows, but for tags that would repeat the sentence before them. */
  @Test
  @Tag("long")
  void isMadeWithoutAWarning(@TempDir Path folder) throws IOException {
    writeElements(folder);
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "-quiet",
                "-Xdoclint:all,-missing",
                "-notimestamp",
                "-encoding",
                "UTF-8",
                "--release",
                "17",
                "-linkoffline",
                JAVA,
                folder.toUri().toString(),
                "-classpath",
                System.getProperty("java.class.path"),
                "-d",
                PAGES.toString()));
    arguments.addAll(sources());
    ByteArrayOutputStream said = new ByteArrayOutputStream();
    PrintStream print = new PrintStream(said, true, UTF_8);
    int code =
        ToolProvider.findFirst("javadoc")
            .orElseThrow()
            .run(print, print, arguments.toArray(String[]::new));
    assertThat(said.toString(UTF_8)).isEmpty();
    assertThat(code).isZero();
    assertThat(Files.readAllLines(PAGES.resolve("element-list")))
        .containsExactlyInAnyOrderElementsOf(ApiTest.stablePackages());
    assertThat(PAGES.resolve("org/headhouse/linter/SiteLinter.html"))
        .content(UTF_8)
        .contains(JAVA + "java.base/java/nio/file/Path.html", "result/FixKind.html");
  }
}
