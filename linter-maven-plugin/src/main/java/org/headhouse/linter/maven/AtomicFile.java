package org.headhouse.linter.maven;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;

/** Writes a file beside its place and moves it there, so that no reader ever meets half of it. */
final class AtomicFile {
  private AtomicFile() {}

  /** What writes the content. */
  @FunctionalInterface
  interface Writer {
    void write(OutputStream out) throws Exception;
  }

  // The writers throw what their formats throw; here all of it means that the file is not written.
  @SuppressWarnings("IllegalCatch")
  static void write(Path file, Writer writer) throws MojoExecutionException {
    Path beside = null;
    try {
      Path folder = file.toAbsolutePath().getParent();
      Files.createDirectories(folder);
      beside = Files.createTempFile(folder, file.getFileName().toString(), ".part");
      try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(beside))) {
        writer.write(out);
      }
      Files.move(beside, file, StandardCopyOption.REPLACE_EXISTING);
    } catch (Exception failure) {
      delete(beside);
      throw new MojoExecutionException(file + " cannot be written: " + failure, failure);
    }
  }

  private static void delete(@Nullable Path file) {
    try {
      if (file != null) {
        Files.deleteIfExists(file);
      }
    } catch (IOException leftBehind) {
      // The failure that led here is told; a rest in the output folder is no second one.
    }
  }
}
