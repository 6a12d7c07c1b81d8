package org.headhouse.linter.files;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.headhouse.linter.source.FolderBoundary;

/**
 * One search through a folder: first the files in it, then those that links lead to. So a file is
 * found by its own name where it has one. No folder is entered twice, which ends a circle of links.
 */
final class SiteSearch {
  /**
   * The same on every system, whether or not it ignores case, and whatever separates names there.
   */
  private static final Comparator<Path> BY_NAME =
      Comparator.comparing(BaseFolder::slashes).thenComparing(Comparator.naturalOrder());

  private final Path folder;
  private final Path root;
  private final int rootLength;
  private final SiteNames names;
  private final Set<Path> others;
  private final Set<Path> entered = new HashSet<>();
  private final Set<Path> targets = new HashSet<>();
  private final TreeMap<Path, FoundFile> found = new TreeMap<>(BY_NAME);
  private final TreeMap<Path, String> overlooked = new TreeMap<>(BY_NAME);
  private final TreeSet<Path> links = new TreeSet<>(BY_NAME);

  /**
   * @param folder may itself be a link
   * @param others real paths of files that are no sites
   */
  SiteSearch(Path folder, SiteNames names, Set<Path> others) throws IOException {
    this.folder = folder;
    this.root = folder.toRealPath();
    String shown = BaseFolder.slashes(root);
    this.rootLength = shown.endsWith("/") ? shown.length() : shown.length() + 1;
    this.names = names;
    this.others = others;
  }

  /** Looks for sites in the whole folder. */
  void all() throws IOException {
    enter(root, root);
    for (Path link = links.pollFirst(); link != null; link = links.pollFirst()) {
      follow(link);
    }
  }

  /** Looks which of some files are sites. */
  void these(List<Path> asked) throws IOException {
    for (Path file : asked) {
      follow(root.resolve(folder.relativize(file)));
    }
  }

  /** What was found, in the order of the names. */
  List<FoundFile> found() {
    return List.copyOf(found.values());
  }

  /** What is likely to be meant as a site and is none, each with what to name it. */
  List<FoundSites.Overlooked> overlooked() {
    return overlooked.entrySet().stream()
        .map(one -> new FoundSites.Overlooked(one.getKey(), one.getValue()))
        .toList();
  }

  /**
   * Looks at everything in a folder but what cannot be a site by its name, which need not be
   * readable. A file that vanishes meanwhile is not there.
   *
   * @param real its path without links
   * @param named the path that led there
   */
  private void enter(Path real, Path named) throws IOException {
    boolean byItsOwnName = named.equals(real);
    Files.walkFileTree(
        real,
        new SimpleFileVisitor<>() {
          @Override
          public FileVisitResult preVisitDirectory(Path visited, BasicFileAttributes attributes) {
            boolean leftOut = !visited.equals(real) && names.leaveOut(name(named(visited)));
            return !leftOut && entered.add(visited)
                ? FileVisitResult.CONTINUE
                : FileVisitResult.SKIP_SUBTREE;
          }

          @Override
          public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) {
            Path name = named(file);
            if (attributes.isSymbolicLink()) {
              links.add(name);
            } else if (names.matches(name(name))) {
              add(name, file);
            } else if (!others.contains(file)) {
              names.meant(name(name)).ifPresent(meant -> overlooked.put(path(name), meant));
            }
            return FileVisitResult.CONTINUE;
          }

          /** A folder is opened before the visitor is asked whether to enter it. */
          @Override
          public FileVisitResult visitFileFailed(Path file, IOException failure)
              throws IOException {
            boolean gone = failure instanceof NoSuchFileException && !file.equals(root);
            boolean leftOut = !file.equals(real) && names.leaveOut(name(named(file)));
            if (gone || leftOut) {
              return FileVisitResult.CONTINUE;
            }
            throw failure;
          }

          private Path named(Path visited) {
            return byItsOwnName ? visited : named.resolve(real.relativize(visited));
          }
        });
  }

  private void follow(Path link) throws IOException {
    boolean asFile = names.matches(name(link));
    boolean asFolder = !names.leaveOut(name(link));
    boolean excluded = names.exclude(name(link));
    Path real;
    try {
      real = link.toRealPath();
    } catch (IOException leadsNowhere) {
      if (asFile) {
        add(link, link);
      } else if (asFolder && !excluded && leadsNowhere instanceof AccessDeniedException) {
        throw leadsNowhere;
      }
      return;
    }
    boolean inside = new FolderBoundary(root).contains(real);
    if (!Files.isDirectory(real)) {
      if (asFile && inside) {
        add(link, real);
      } else if (asFile && !others.contains(real)) {
        refuse(link, real);
      }
    } else if (inside && asFolder) {
      enter(real, link);
    } else if (asFolder && !excluded) {
      refuse(link, real);
    }
  }

  private void add(Path named, Path real) {
    if (!others.contains(real) && targets.add(real)) {
      found.put(named, new FoundFile(path(named)));
    }
  }

  private void refuse(Path link, Path real) {
    IOException reason =
        new IOException(
            (real.startsWith(root)
                    ? "it is a link that leads into a folder of git, to "
                    : "it is a link that leads out of the folder of sites, to ")
                + real
                + ": put a copy in its place, or exclude it");
    found.put(link, new FoundFile(path(link), reason));
  }

  /** As a path: some names cannot be written as text in this locale. */
  private Path path(Path named) {
    return folder.equals(root) ? named : folder.resolve(root.relativize(named));
  }

  /** From the folder on; every path here begins with it. */
  private String name(Path named) {
    return BaseFolder.slashes(named).substring(rootLength);
  }
}
