package org.headhouse.linter.baseline;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.function.UnaryOperator;

/**
 * Names of files in results and in a baseline. A baseline has them from its own folder, so that
 * builds in different folders can use the same one.
 *
 * @param base what the names of results start at
 * @param folder of the baseline
 */
public record SitePaths(Path base, Path folder) {

  public SitePaths {
    base = base.toAbsolutePath().normalize();
    folder = folder.toAbsolutePath().normalize();
  }

  /** The names for a baseline, and for results whose names start at a folder. */
  public static SitePaths of(Path baseline, Path base) {
    Path folder = baseline.toAbsolutePath().getParent();
    return new SitePaths(base, folder == null ? base : folder);
  }

  /** The name that a baseline has for a file of a result. */
  String kept(String shown) {
    return renamed(shown, name -> slashes(folder.relativize(base.resolve(name).normalize())));
  }

  /** The name that results have for a file of a baseline. */
  String shown(String kept) {
    return renamed(kept, name -> shown(folder.resolve(name)));
  }

  /** The name that results would have for a file. */
  public String shown(Path file) {
    Path whole = file.toAbsolutePath().normalize();
    return slashes(whole.startsWith(base) ? base.relativize(whole) : whole);
  }

  boolean exists(String kept) {
    try {
      return Files.exists(folder.resolve(kept));
    } catch (InvalidPathException noFile) {
      return false;
    }
  }

  /** A text without a file, or a file on another drive, keeps its name. */
  private static String renamed(String name, UnaryOperator<String> change) {
    try {
      return name.startsWith("<") ? name : change.apply(name);
    } catch (IllegalArgumentException elsewhere) {
      return name;
    }
  }

  private static String slashes(Path path) {
    return path.toString().replace(path.getFileSystem().getSeparator(), "/");
  }
}
