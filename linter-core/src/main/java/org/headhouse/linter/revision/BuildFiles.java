package org.headhouse.linter.revision;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The files of a repository that a build is made of, and so decide which rules, levels, files and
 * version of the linter it has: {@code pom.xml} and all that is in {@code .mvn}.
 *
 * @param revision one of the two states that are compared
 */
record BuildFiles(Revision revision) {
  private static final String PROJECT = "pom.xml";
  private static final String SETTINGS = ".mvn";

  /**
   * Those of the revision, wherever they are, and those of today in the folders above the sites: a
   * new one elsewhere holds for these sites only where one of the others names it.
   */
  Set<Path> all(Path sites) throws IOException {
    Set<Path> all = new LinkedHashSet<>();
    for (String file : revision.below(revision.root())) {
      if (isOfBuild(file)) {
        all.add(revision.root().resolve(file));
      }
    }
    for (Path folder = sites.toRealPath(); folder != null; folder = folder.getParent()) {
      if (!folder.startsWith(revision.root())) {
        break;
      }
      if (Files.exists(folder.resolve(PROJECT))) {
        all.add(folder.resolve(PROJECT));
      }
      all.addAll(filesBelow(folder.resolve(SETTINGS)));
    }
    return all;
  }

  private static boolean isOfBuild(String file) {
    return file.equals(PROJECT)
        || file.endsWith("/" + PROJECT)
        || file.startsWith(SETTINGS + "/")
        || file.contains("/" + SETTINGS + "/");
  }

  private static List<Path> filesBelow(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.walk(folder)) {
      return files.filter(Files::isRegularFile).toList();
    }
  }
}
