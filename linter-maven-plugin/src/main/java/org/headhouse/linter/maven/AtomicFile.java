package org.headhouse.linter.maven;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.CopyOption;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
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

  /** Writes a file, or replaces it. */
  static void write(Path file, Writer writer) throws MojoExecutionException {
    write(file, writer, StandardCopyOption.REPLACE_EXISTING);
  }

  /** Writes a file where there is none; one that has come in the meantime stays as it is. */
  static void writeNew(Path file, Writer writer) throws MojoExecutionException {
    write(file, writer, new CopyOption[] {});
  }

  // The writers throw what their formats throw; here all of it means that the file is not written.
  @SuppressWarnings("IllegalCatch")
  private static void write(Path file, Writer writer, CopyOption... options)
      throws MojoExecutionException {
    // Not a temporary file of the library: that one is closed to all but its owner, and stays so.
    Path beside = file.resolveSibling(file.getFileName() + "." + UUID.randomUUID() + ".part");
    try {
      createFolder(file.toAbsolutePath().getParent());
      try (OutputStream out =
          new BufferedOutputStream(Files.newOutputStream(beside, StandardOpenOption.CREATE_NEW))) {
        writer.write(out);
      }
      Files.move(beside, file, options);
    } catch (IOException failure) {
      delete(beside);
      if (failure instanceof FileAlreadyExistsException && Files.isRegularFile(file)) {
        throw new MojoExecutionException(file + " is there already, and is left as it is", failure);
      }
      throw FileTrouble.of(file + " cannot be written", failure);
    } catch (Exception failure) {
      delete(beside);
      throw new MojoExecutionException(file + " cannot be written: " + failure, failure);
    }
  }

  /** Creating a folder that is there already fails where it is a link to one. */
  private static void createFolder(@Nullable Path folder) throws IOException {
    if (folder != null && !Files.isDirectory(folder)) {
      Files.createDirectories(folder);
    }
  }

  private static void delete(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException leftBehind) {
      // The failure that led here is told; a rest in the output folder is no second one.
    }
  }
}
