package org.headhouse.linter.files;

import java.io.IOException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Duration;
import java.time.Instant;
import java.util.regex.Pattern;

/** What runs that were killed left behind: files that were not yet moved into their place. */
public final class StaleParts {
  private static final Pattern NAME =
      Pattern.compile("\\.[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}\\.part");

  /** A run that is still writing is never as old. */
  private static final Duration AGE = Duration.ofDays(1);

  private StaleParts() {}

  /** Deletes those in a folder, where there is one; what cannot be deleted stays. */
  public static void sweep(Path folder) {
    // To list what is no folder would open it, and a pipe waits for a writer.
    if (!Files.isDirectory(folder)) {
      return;
    }
    Instant before = Instant.now().minus(AGE);
    try (DirectoryStream<Path> parts = Files.newDirectoryStream(folder, ".*.part")) {
      for (Path part : parts) {
        if (NAME.matcher(part.getFileName().toString()).matches() && isStale(part, before)) {
          Files.deleteIfExists(part);
        }
      }
    } catch (IOException | DirectoryIteratorException stays) {
      // Nothing of this run depends on it.
    }
  }

  private static boolean isStale(Path part, Instant before) throws IOException {
    BasicFileAttributes attributes =
        Files.readAttributes(part, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    return attributes.isRegularFile() && attributes.lastModifiedTime().toInstant().isBefore(before);
  }
}
