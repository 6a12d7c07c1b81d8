package org.headhouse.linter;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One class, loaded from jars and folders that differ. */
class CodeStampTest {
  private static final String FILE = CodeStampTest.class.getName().replace('.', '/') + ".class";

  @TempDir private Path folder;

  private Path jar(String name, String other) throws IOException {
    Path jar = folder.resolve(name);
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
      add(FILE, code(), out);
      add("other.txt", other.getBytes(java.nio.charset.StandardCharsets.UTF_8), out);
    }
    return jar;
  }

  private static void add(String name, byte[] bytes, JarOutputStream out) throws IOException {
    JarEntry entry = new JarEntry(name);
    entry.setTime(0);
    out.putNextEntry(entry);
    out.write(bytes);
  }

  private static byte[] code() throws IOException {
    try (InputStream in = CodeStampTest.class.getClassLoader().getResourceAsStream(FILE)) {
      return in == null ? new byte[0] : in.readAllBytes();
    }
  }

  private static Optional<String> stamp(Path... sources) throws Exception {
    URL[] urls = new URL[sources.length];
    for (int i = 0; i < urls.length; i++) {
      urls[i] = sources[i].toUri().toURL();
    }
    try (URLClassLoader loader =
        new URLClassLoader(urls, null) {
          @Override
          protected Class<?> findClass(String name) throws ClassNotFoundException {
            return name.startsWith("org.headhouse")
                ? super.findClass(name)
                : CodeStampTest.class.getClassLoader().loadClass(name);
          }
        }) {
      return CodeStamp.of(List.of(loader.loadClass(CodeStampTest.class.getName())));
    }
  }

  /** A CI job unpacks its jars anew each time. */
  @Test
  void theSameJarAtAnotherPlaceAndTimeIsTheSameCode() throws Exception {
    Path one = jar("one.jar", "a");
    Path copy = Files.copy(one, Files.createDirectory(folder.resolve("copy")).resolve("two.jar"));
    Files.setLastModifiedTime(copy, FileTime.fromMillis(0));
    assertThat(stamp(one)).isPresent().isEqualTo(stamp(copy));
  }

  @Test
  void anotherJarOfTheSameSizeAndTimeIsOtherCode() throws Exception {
    Path one = jar("one.jar", "a");
    Path two = jar("two.jar", "b");
    Files.setLastModifiedTime(two, Files.getLastModifiedTime(one));
    assertThat(Files.size(one)).isEqualTo(Files.size(two));
    assertThat(stamp(one)).isNotEqualTo(stamp(two));
  }

  /** A rule may ask whatever lies beside it, as Maven puts it there. */
  @Test
  void whatLiesBesideCounts() throws Exception {
    Path one = jar("one.jar", "a");
    Path other = jar("other.jar", "a");
    Optional<String> before = stamp(one, other);
    assertThat(before).isPresent().isNotEqualTo(stamp(one));
    jar("other.jar", "b");
    assertThat(stamp(one, other)).isPresent().isNotEqualTo(before);
    assertThat(stamp(one, folder.resolve("lost.jar"))).isEqualTo(stamp(one));
  }

  /** Code may lie in the folder that somebody works in. */
  @Test
  void aFolderOfVeryManyFilesHasNoStamp() throws Exception {
    Path classes = Files.createDirectory(folder.resolve("classes"));
    Path file = classes.resolve(FILE);
    Files.createDirectories(file.getParent());
    Files.write(file, code());
    assertThat(stamp(classes)).isPresent();
    for (int i = 0; i < 10_000; i++) {
      Files.createFile(classes.resolve(i + ".txt"));
    }
    assertThat(stamp(classes)).isEmpty();
  }

  @Test
  void codeOfThePlatformHasNoStamp() {
    assertThat(CodeStamp.of(List.of(String.class))).isEmpty();
  }
}
