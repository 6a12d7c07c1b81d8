package org.headhouse.linter;

import java.io.IOException;
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

/**
 * Tells code from other code without reading it: by the sizes and the times of the jars or folders
 * that it was loaded from. A version does not do, since a snapshot has the same for many builds.
 */
final class CodeStamp {
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
        stamp.append(of(source));
      }
      return Optional.of(stamp.toString());
    } catch (URISyntaxException
        | IOException
        | IllegalArgumentException
        | FileSystemNotFoundException
        | SecurityException elsewhere) {
      return Optional.empty();
    }
  }

  private static String of(Path source) throws IOException {
    StringBuilder stamp = new StringBuilder();
    try (Stream<Path> files = Files.walk(source)) {
      for (Path file : (Iterable<Path>) files.sorted()::iterator) {
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
