package org.headhouse.linter.maven;

import java.io.IOException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import org.apache.maven.plugin.MojoExecutionException;
import org.codehaus.plexus.util.SelectorUtils;

/** Finds the files of sites in a folder; links to folders are not followed. */
final class SiteFiles {
  private final Path folder;
  private final List<String> includes;
  private final List<String> excludes;
  private final Set<Path> others;

  /**
   * @param others files that may lie in the folder and are no sites
   */
  SiteFiles(Path folder, List<String> includes, List<String> excludes, Set<Path> others) {
    this.folder = folder;
    this.includes = includes;
    this.excludes = excludes;
    this.others = others;
  }

  /** The files, in the order of their paths. */
  List<Path> find() throws MojoExecutionException {
    List<Path> files = new ArrayList<>();
    try {
      Files.walkFileTree(
          folder,
          new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
              if (isSite(file)) {
                files.add(file);
              }
              return FileVisitResult.CONTINUE;
            }
          });
    } catch (IOException unreadable) {
      throw new MojoExecutionException(
          "the folder of sites cannot be read: " + unreadable, unreadable);
    }
    files.sort(Comparator.comparing(file -> name(file)));
    return files;
  }

  private boolean isSite(Path file) {
    String name = name(file);
    return Files.isRegularFile(file)
        && includes.stream().anyMatch(pattern -> matches(pattern, name))
        && excludes.stream().noneMatch(pattern -> matches(pattern, name))
        && !others.contains(file.toAbsolutePath().normalize());
  }

  private String name(Path file) {
    return folder.relativize(file).toString().replace('\\', '/');
  }

  private static boolean matches(String pattern, String name) {
    return SelectorUtils.matchPath(pattern.replace('\\', '/'), name, "/", true);
  }
}
