package org.headhouse.linter.run;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.Example;
import org.headhouse.linter.SiteLinter;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Runs from a jar, as they are in the builds of users, with a cache folder of their own. */
@EnabledOnOs({OS.LINUX, OS.MAC})
class CleanSitesJarTest {
  /** As in a container that knows its user by number only: nothing is kept there. */
  @BeforeAll
  static void theUserHasAName() {
    assumeTrue(!System.getProperty("user.name").equals("?"));
  }

  @TempDir private Path folder;

  /** The linter in a jar, with one text more. */
  private Path jar(String name, String text) throws Exception {
    Path classes =
        Path.of(SiteLinter.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    Path jar = folder.resolve(name);
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar));
        Stream<Path> all = Files.walk(classes)) {
      for (Path file : (Iterable<Path>) all.filter(Files::isRegularFile).sorted()::iterator) {
        add(classes.relativize(file).toString(), Files.readAllBytes(file), out);
      }
      add("text.txt", text.getBytes(UTF_8), out);
    }
    return jar;
  }

  private static void add(String name, byte[] bytes, JarOutputStream out) throws IOException {
    JarEntry entry = new JarEntry(name);
    entry.setTime(0);
    out.putNextEntry(entry);
    out.write(bytes);
  }

  private String run(Path jar, Path cache) throws Exception {
    String others =
        Arrays.stream(System.getProperty("java.class.path").split(":"))
            .filter(one -> !one.isEmpty())
            .collect(Collectors.joining(":"));
    ProcessBuilder builder =
        new ProcessBuilder(
                List.of(
                    Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                    "-cp",
                    jar + ":" + others,
                    CleanSitesRun.class.getName(),
                    folder.resolve("target").toString(),
                    folder.resolve("example.yaml").toString()))
            .redirectErrorStream(true);
    builder.environment().put("XDG_CACHE_HOME", cache.toString());
    Process process = builder.start();
    String printed = new String(process.getInputStream().readAllBytes(), UTF_8);
    assertThat(process.waitFor()).as(printed).isZero();
    return printed.strip();
  }

  /** A seal tells the same file for the same user and code, and nothing for any other. */
  @Test
  void whatIsKeptIsOfOneUserAndOneVersion() throws Exception {
    Files.writeString(folder.resolve("example.yaml"), Example.SITE);
    Path jar = jar("one.jar", "a");
    Path cache = folder.resolve("home/.cache");
    assertThat(run(jar, cache)).isEqualTo("kept");
    Path kept = folder.resolve("target/clean-sites.cache");
    byte[] first = Files.readAllBytes(kept);
    assertThat(cache.resolve("headhouse-linter/key")).isRegularFile();
    // A CI job unpacks its jars anew each time.
    Path copy = Files.copy(jar, Files.createDirectory(folder.resolve("copy")).resolve("two.jar"));
    assertThat(run(copy, cache)).isEqualTo("kept");
    assertThat(kept).hasBinaryContent(first);
    assertThat(run(jar("other.jar", "b"), cache)).isEqualTo("kept");
    assertThat(Files.readAllBytes(kept)).isNotEqualTo(first);
    assertThat(run(jar, folder.resolve("another"))).isEqualTo("kept");
    assertThat(Files.readAllBytes(kept)).isNotEqualTo(first);
    assertThat(run(jar, cache)).isEqualTo("kept");
    assertThat(kept).hasBinaryContent(first);
  }

  /** A build in a closed home works as ever, and says nothing of it. */
  @Test
  void whereNoKeyCanBeMadeNothingIsKept() throws Exception {
    Files.writeString(folder.resolve("example.yaml"), Example.SITE);
    Path noFolder = Files.writeString(folder.resolve("file"), "");
    assertThat(run(jar("one.jar", "a"), noFolder)).isEqualTo("nothing is kept");
    assertThat(folder.resolve("target")).doesNotExist();
  }
}
