package org.headhouse.linter.report;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.headhouse.linter.source.FolderBoundary;
import org.jspecify.annotations.Nullable;

/**
 * Names of files for a host of code, which knows them from the root of the repository, whatever
 * folder the check ran in.
 *
 * @param base what the names of results start at
 * @param root of the repository, or null where there is none and names stay as they are
 */
public record RepositoryPaths(Path base, @Nullable Path root) {

  public RepositoryPaths {
    base = base.toAbsolutePath().normalize();
    root = root == null ? null : root.toAbsolutePath().normalize();
  }

  /** Names as they are. */
  public static RepositoryPaths unknown() {
    return new RepositoryPaths(Path.of(""), null);
  }

  /**
   * From the root of the git repository that a path lies in.
   *
   * @param base what the names of results start at
   * @param sites the folder of the sites, or one file
   */
  public static RepositoryPaths around(Path sites, Path base) {
    return new RepositoryPaths(base, FolderBoundary.repository(sites).orElse(null));
  }

  /** The name of a file of a result; one outside the repository, and a text, keep theirs. */
  public String of(String shown) {
    if (root == null || shown.startsWith("<")) {
      return shown;
    }
    try {
      Path file = base.resolve(shown).normalize();
      return isInside(file) ? slashes(root.relativize(file)) : shown;
    } catch (InvalidPathException noFile) {
      return shown;
    }
  }

  /** Whether the name that a file gets starts at the root of the repository. */
  boolean isFromRoot(String shown) {
    try {
      return !shown.startsWith("<") && isInside(base.resolve(shown).normalize());
    } catch (InvalidPathException noFile) {
      return false;
    }
  }

  private boolean isInside(Path file) {
    return root != null && file.startsWith(root) && !file.equals(root);
  }

  private static String slashes(Path path) {
    return path.toString().replace(path.getFileSystem().getSeparator(), "/");
  }
}
