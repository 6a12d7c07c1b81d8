package org.headhouse.linter.maven;

import java.io.IOException;
import java.nio.file.FileSystemLoopException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.PatternSyntaxException;
import org.apache.maven.plugin.MojoExecutionException;

/**
 * Finds the files of sites in a folder. Links are followed, and what is hidden by a dot in front of
 * its name is left out. A link that leads nowhere is a site that cannot be read, not one that is
 * not there.
 */
final class SiteFiles {
  private static final int DEEPEST = 100;

  private final Path folder;
  private final SiteNames sites;
  private final Set<Path> others;

  /**
   * @param others files that may lie in the folder and are no sites
   */
  SiteFiles(Path folder, SiteNames sites, List<Path> others) {
    this.folder = folder;
    this.sites = sites;
    this.others = new HashSet<>(others.stream().map(SiteFiles::real).toList());
  }

  /** The files, in the order of their paths. */
  List<Path> find() throws MojoExecutionException {
    List<String> names = new ArrayList<>();
    try {
      // The folder itself may be a link.
      Path root = folder.toRealPath();
      Files.walkFileTree(
          root, EnumSet.of(FileVisitOption.FOLLOW_LINKS), DEEPEST, new Finder(root, names));
    } catch (IOException unreadable) {
      throw FileTrouble.of("the folder of sites cannot be read", unreadable);
    } catch (PatternSyntaxException wrong) {
      throw new MojoExecutionException(
          "linter.includes or linter.excludes has a pattern that cannot be read, \""
              + wrong.getPattern()
              + "\": correct it",
          wrong);
    }
    names.sort(Comparator.naturalOrder());
    return names.stream().map(folder::resolve).toList();
  }

  private final class Finder extends SimpleFileVisitor<Path> {
    private final Path root;
    private final List<String> names;

    Finder(Path root, List<String> names) {
      this.root = root;
      this.names = names;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path visited, BasicFileAttributes attributes) {
      return visited.equals(root) || !isHidden(visited)
          ? FileVisitResult.CONTINUE
          : FileVisitResult.SKIP_SUBTREE;
    }

    /** A link to a folder that holds it leads nowhere new. */
    @Override
    public FileVisitResult visitFileFailed(Path file, IOException failure) throws IOException {
      if (failure instanceof FileSystemLoopException) {
        return FileVisitResult.CONTINUE;
      }
      throw failure;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
      String name = root.relativize(file).toString().replace('\\', '/');
      if (isFile(file, attributes) && sites.matches(name) && !others.contains(real(file))) {
        names.add(name);
      }
      return FileVisitResult.CONTINUE;
    }
  }

  private static boolean isFile(Path file, BasicFileAttributes attributes) {
    return attributes.isRegularFile()
        || (attributes.isSymbolicLink() && (Files.isRegularFile(file) || !Files.exists(file)));
  }

  private static boolean isHidden(Path path) {
    return path.getFileName().toString().startsWith(".");
  }

  /** The one path of a file that may be reached by several. */
  private static Path real(Path file) {
    try {
      return file.toRealPath();
    } catch (IOException leadsNowhere) {
      return file.toAbsolutePath().normalize();
    }
  }
}
