package org.headhouse.linter.files;

import java.nio.file.Path;

/**
 * The folder that a run starts in: paths inside it are shown from it.
 *
 * @param path of the folder
 */
public record BaseFolder(Path path) {

  public BaseFolder {
    path = path.toAbsolutePath().normalize();
  }

  /** A path as it is shown, with forward slashes; a dot for the folder itself. */
  public String shown(Path file) {
    Path absolute = path.resolve(file).normalize();
    if (absolute.equals(path)) {
      return ".";
    }
    return slashes(absolute.startsWith(path) ? path.relativize(absolute) : absolute);
  }

  /** With forward slashes; except on Windows, a backslash is part of a name. */
  static String slashes(Path path) {
    String separator = path.getFileSystem().getSeparator();
    String text = path.toString();
    return separator.equals("/") ? text : text.replace(separator, "/");
  }
}
