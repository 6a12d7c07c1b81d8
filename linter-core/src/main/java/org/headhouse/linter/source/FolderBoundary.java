package org.headhouse.linter.source;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Optional;
import org.headhouse.linter.stability.Internal;

/**
 * The folder that files belong to which nobody named: whoever may send in a change to a repository
 * may also send in a link, and must not make a build read what is outside.
 *
 * @param root without links
 */
@Internal
public record FolderBoundary(Path root) {
  private static final String GIT = ".git";

  /** In no folder. */
  private static final Path LEADS_NOWHERE = Path.of("");

  /**
   * The repository that a path is in; without one, the folder that holds it. Of the links on the
   * way only those that lead to where the program runs are followed.
   */
  public static FolderBoundary around(Path path) {
    Path absolute = path.toAbsolutePath().normalize();
    Path holder = absolute.getParent();
    return new FolderBoundary(
        real(repository(absolute).orElse(holder == null ? absolute : holder)));
  }

  /** The root of the repository that a path is in, as the path has it; links are followed alike. */
  public static Optional<Path> repository(Path path) {
    Path here = Path.of("").toAbsolutePath();
    for (Path folder = path.toAbsolutePath().normalize();
        folder != null;
        folder = folder.getParent()) {
      boolean own = !Files.isSymbolicLink(folder) || here.startsWith(folder);
      if (own && Files.exists(folder.resolve(GIT), LinkOption.NOFOLLOW_LINKS)) {
        return Optional.of(folder);
      }
    }
    return Optional.empty();
  }

  /** Whether a path leads to something inside, and not to what git keeps; it need not exist. */
  public boolean contains(Path path) {
    Path real = real(path.toAbsolutePath().normalize());
    if (!real.startsWith(root)) {
      return false;
    }
    for (Path name : root.relativize(real)) {
      if (GIT.equalsIgnoreCase(name.toString())) {
        return false;
      }
    }
    return true;
  }

  /**
   * Without links, as far as it is there: whether a file outside exists must not be seen from what
   * is said.
   */
  private static Path real(Path path) {
    try {
      return path.toRealPath();
    } catch (IOException notThere) {
      if (Files.isSymbolicLink(path)) {
        return LEADS_NOWHERE;
      }
      Path parent = path.getParent();
      return parent == null ? path : real(parent).resolve(path.getFileName());
    }
  }
}
