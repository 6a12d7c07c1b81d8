package org.headhouse.linter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;

/**
 * Tells code from other code: by the sizes and the checksums of the jars that it was loaded from,
 * so that it is the same code on another machine. A version does not do, since a snapshot has the
 * same for many builds. Of a folder, in which code is worked on, sizes and times do.
 */
final class CodeStamp {
  /** More than any folder of classes has; what is larger is a folder of something else. */
  private static final int MOST_FILES = 10_000;

  private CodeStamp() {}

  /** The stamp of the code of some classes, or empty where it comes from something else. */
  static Optional<String> of(List<Class<?>> classes) {
    Set<Path> sources = new LinkedHashSet<>();
    try {
      for (Class<?> one : classes) {
        CodeSource source = one.getProtectionDomain().getCodeSource();
        if (source == null || source.getLocation() == null) {
          return Optional.empty();
        }
        sources.add(Path.of(source.getLocation().toURI()));
      }
      StringBuilder stamp = new StringBuilder();
      for (Path source : sources) {
        String one = Files.isDirectory(source) ? ofFolder(source) : ofJar(source);
        if (one == null) {
          return Optional.empty();
        }
        stamp.append(one).append('\n');
      }
      return Optional.of(stamp.toString());
    } catch (URISyntaxException
        | IOException
        | UncheckedIOException
        | IllegalArgumentException
        | FileSystemNotFoundException
        | SecurityException elsewhere) {
      return Optional.empty();
    }
  }

  private static String ofJar(Path jar) throws IOException {
    CRC32 sum = new CRC32();
    try (InputStream in = Files.newInputStream(jar)) {
      byte[] bytes = in.readAllBytes();
      sum.update(bytes);
      return bytes.length + " " + sum.getValue();
    }
  }

  private static @Nullable String ofFolder(Path folder) throws IOException {
    StringBuilder stamp = new StringBuilder();
    try (Stream<Path> all = Files.walk(folder)) {
      List<Path> files = all.limit(MOST_FILES + 1).sorted().toList();
      if (files.size() > MOST_FILES) {
        return null;
      }
      for (Path file : files) {
        stamp
            .append(file)
            .append(' ')
            .append(Files.size(file))
            .append(' ')
            .append(Files.getLastModifiedTime(file))
            .append('\n');
      }
    }
    return stamp.toString();
  }
}
