package org.headhouse.linter;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.FileSystemNotFoundException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.Collections;
import java.util.IdentityHashMap;
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

  private static final int BYTES_AT_A_TIME = 1 << 18;

  private CodeStamp() {}

  /** The stamp of the code of some classes, or empty where it comes from something else. */
  static Optional<String> of(List<Class<?>> classes) {
    try {
      Set<Path> sources = sources(classes);
      if (sources.isEmpty()) {
        return Optional.empty();
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

  /**
   * Where classes come from, and whatever else their loaders look into, which a rule may ask; none
   * where that is unknown of one.
   */
  private static Set<Path> sources(List<Class<?>> classes) throws URISyntaxException {
    // Most classes come from one jar; none is asked twice where that lies.
    Set<CodeSource> origins = Collections.newSetFromMap(new IdentityHashMap<>());
    Set<ClassLoader> loaders = Collections.newSetFromMap(new IdentityHashMap<>());
    Set<Path> sources = new LinkedHashSet<>();
    for (Class<?> one : classes) {
      CodeSource origin = one.getProtectionDomain().getCodeSource();
      if (origin == null || origin.getLocation() == null) {
        return Set.of();
      }
      if (origins.add(origin)) {
        sources.add(Path.of(origin.getLocation().toURI()));
      }
      if (one.getClassLoader() instanceof URLClassLoader loader && loaders.add(loader)) {
        for (URL url : loader.getURLs()) {
          Path source = Path.of(url.toURI());
          if (Files.exists(source)) {
            sources.add(source);
          }
        }
      }
    }
    return sources;
  }

  private static String ofJar(Path jar) throws IOException {
    CRC32 sum = new CRC32();
    long size = 0;
    byte[] part = new byte[BYTES_AT_A_TIME];
    try (InputStream in = Files.newInputStream(jar)) {
      for (int read = in.read(part); read >= 0; read = in.read(part)) {
        sum.update(part, 0, read);
        size += read;
      }
    }
    return size + " " + sum.getValue();
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
