package org.headhouse.linter.source;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;

/** Opens regular files, and refuses folders, pipes, sockets and devices. */
public final class RegularFile {
  private RegularFile() {}

  /**
   * Opens a file, or the one that a link leads to. A pipe would wait for a writer and a device may
   * have no end, so neither is opened.
   *
   * @throws IOException where it is none, or cannot be read
   */
  public static InputStream open(Path file) throws IOException {
    BasicFileAttributes attributes = Files.readAttributes(file, BasicFileAttributes.class);
    if (attributes.isDirectory()) {
      throw new FileSystemException(file.toString(), null, "it is a folder");
    }
    if (attributes.isOther()) {
      throw new FileSystemException(
          file.toString(), null, "it is no file, but a pipe, a socket or a device");
    }
    return Files.newInputStream(file);
  }
}
