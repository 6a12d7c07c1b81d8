package org.headhouse.linter.revision;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.eclipse.jgit.errors.LargeObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.AndTreeFilter;
import org.eclipse.jgit.treewalk.filter.PathFilter;
import org.eclipse.jgit.treewalk.filter.TreeFilter;
import org.headhouse.linter.report.FileHistory;
import org.headhouse.linter.report.SiteHistory;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/**
 * The states of files in the revisions before the one that is checked out. All revisions are walked
 * once, when the first file is asked for. A repository that cannot be read is none.
 */
public final class GitHistory implements SiteHistory, AutoCloseable {
  private static final int SHOWN_DIGITS = 12;

  private final @Nullable Repository repository;
  private final Path folder;
  private final @Nullable ObjectId end;
  private final boolean andNow;
  private @Nullable Walked walked;

  /**
   * What the walk found.
   *
   * @param states by path from the top of the work tree, the newest first
   * @param isWhole whether no revision was left out when the repository was cloned
   */
  private record Walked(Path root, Map<String, List<State>> states, boolean isWhole) {
    static final Walked NOTHING = new Walked(Path.of(""), Map.of(), false);
  }

  /** The content that a revision gave a file. */
  private record State(ObjectId commit, ObjectId blob) {
    String shown() {
      return commit.getName().substring(0, SHOWN_DIGITS);
    }
  }

  private GitHistory(
      @Nullable Repository repository, Path folder, @Nullable ObjectId end, boolean andNow) {
    this.repository = repository;
    this.folder = folder;
    this.end = end;
    this.andNow = andNow;
  }

  /**
   * The history of what is in a folder, up to a revision. It must not be used after the revision is
   * closed, which closes all.
   *
   * @param inside a folder or a file
   * @param andNow whether it is also that up to the revision that is checked out
   */
  static GitHistory upTo(Revision revision, Path inside, boolean andNow) {
    return new GitHistory(
        revision.repository(), inside.toAbsolutePath().normalize(), revision.commit(), andNow);
  }

  /**
   * The history of what is in a folder.
   *
   * @param inside a folder or a file
   */
  public static GitHistory open(Path inside) {
    HermeticSystemReader.use();
    Path path = inside.toAbsolutePath().normalize();
    try {
      FileRepositoryBuilder builder =
          new FileRepositoryBuilder()
              .readEnvironment()
              .findGitDir(existing(path).toRealPath().toFile());
      if (builder.getGitDir() != null) {
        Repository repository = builder.build();
        if (!repository.isBare() && isReadable(repository)) {
          return new GitHistory(repository, path, null, true);
        }
        repository.close();
      }
    } catch (IOException | IllegalArgumentException unreadable) {
      // Sheets do not need it: they say that the history was not at hand.
    }
    return new GitHistory(null, path, null, true);
  }

  /** The library for git reads hashes of one kind only. */
  private static boolean isReadable(Repository repository) {
    String hash = repository.getConfig().getString("extensions", null, "objectformat");
    return hash == null || hash.equalsIgnoreCase("sha1");
  }

  private static Path existing(Path path) {
    Path folder = path;
    while (!Files.isDirectory(folder) && folder.getParent() != null) {
      folder = folder.getParent();
    }
    return folder;
  }

  @Override
  public FileHistory of(InputFile file, byte[] content) {
    Path origin = file.origin();
    if (repository == null || origin == null) {
      return FileHistory.UNKNOWN;
    }
    Walked all = walked(repository);
    String path = path(all.root(), origin);
    List<State> states = path == null ? null : all.states().get(path);
    if (states == null || states.isEmpty()) {
      return FileHistory.UNKNOWN;
    }
    Set<ObjectId> now = ids(content);
    State newest = states.get(0);
    String revision =
        now.contains(newest.blob())
            ? newest.shown()
            : "changed since " + newest.shown() + ", and not committed";
    Map<ObjectId, FileHistory.Version> earlier = new LinkedHashMap<>();
    for (State state : states) {
      if (!now.contains(state.blob())) {
        earlier.putIfAbsent(
            state.blob(),
            new FileHistory.Version(state.shown(), () -> read(repository, state.blob())));
      }
    }
    return new FileHistory(true, revision, List.copyOf(earlier.values()), all.isWhole());
  }

  /**
   * The states of a file, whatever it is now.
   *
   * @param states the newest first
   * @param isWhole whether these are all of them
   */
  record Past(List<FileHistory.Content> states, boolean isWhole) {}

  Past past(Path file) {
    if (repository == null) {
      return new Past(List.of(), true);
    }
    Walked all = walked(repository);
    String path = path(all.root(), file);
    List<State> states = path == null ? null : all.states().get(path);
    List<FileHistory.Content> contents = new ArrayList<>();
    for (State state : states == null ? List.<State>of() : states) {
      contents.add(() -> read(repository, state.blob()));
    }
    return new Past(contents, all.isWhole());
  }

  /** The content as it is, and as git keeps it where it writes other line ends on checkout. */
  private static Set<ObjectId> ids(byte[] content) {
    Set<ObjectId> ids = new HashSet<>();
    try (ObjectInserter.Formatter formatter = new ObjectInserter.Formatter()) {
      ids.add(formatter.idFor(Constants.OBJ_BLOB, content));
      ids.add(formatter.idFor(Constants.OBJ_BLOB, EarlierFiles.withoutReturns(content)));
    }
    return ids;
  }

  private static byte[] read(Repository repository, ObjectId blob) throws IOException {
    try {
      return repository.open(blob, Constants.OBJ_BLOB).getCachedBytes(Limits.DEFAULT.bytes());
    } catch (LargeObjectException tooLarge) {
      throw new IOException("an earlier state of the file is too large", tooLarge);
    }
  }

  private synchronized Walked walked(Repository from) {
    Walked known = walked;
    if (known == null) {
      try {
        known = walk(from);
      } catch (IOException | RuntimeException damaged) {
        known = Walked.NOTHING;
      }
      walked = known;
    }
    return known;
  }

  private Walked walk(Repository from) throws IOException {
    Path root = from.getWorkTree().toPath().toRealPath();
    Map<String, List<State>> states = new HashMap<>();
    String below = path(root, folder);
    List<ObjectId> newest =
        Stream.of(end, andNow ? from.resolve(Constants.HEAD) : null)
            .filter(Objects::nonNull)
            .toList();
    if (newest.isEmpty() || below == null) {
      return Walked.NOTHING;
    }
    TreeFilter inside = below.isEmpty() ? TreeFilter.ALL : PathFilter.create(below);
    try (RevWalk commits = new RevWalk(from)) {
      for (ObjectId start : newest) {
        commits.markStart(commits.parseCommit(start));
      }
      commits.setTreeFilter(AndTreeFilter.create(inside, TreeFilter.ANY_DIFF));
      for (RevCommit commit : commits) {
        add(from, commits, commit, inside, states);
      }
    }
    return new Walked(root, states, from.getObjectDatabase().getShallowCommits().isEmpty());
  }

  /** The files that have another content than in every parent. */
  private static void add(
      Repository from,
      RevWalk commits,
      RevCommit commit,
      TreeFilter inside,
      Map<String, List<State>> states)
      throws IOException {
    try (TreeWalk trees = new TreeWalk(from)) {
      trees.addTree(commit.getTree());
      for (RevCommit parent : commit.getParents()) {
        trees.addTree(commits.parseCommit(parent).getTree());
      }
      trees.setRecursive(true);
      trees.setFilter(AndTreeFilter.create(inside, TreeFilter.ANY_DIFF));
      while (trees.next()) {
        FileMode mode = trees.getFileMode(0);
        if (mode.equals(FileMode.REGULAR_FILE) || mode.equals(FileMode.EXECUTABLE_FILE)) {
          ObjectId blob = trees.getObjectId(0);
          boolean isNew = true;
          for (int parent = 1; parent < trees.getTreeCount(); parent++) {
            isNew &= !blob.equals(trees.getObjectId(parent));
          }
          if (isNew) {
            states
                .computeIfAbsent(trees.getPathString(), path -> new ArrayList<>())
                .add(new State(commit.getId().copy(), blob));
          }
        }
      }
    }
  }

  /** From the top of the work tree, whatever links lead there; null for what is outside. */
  private static @Nullable String path(Path root, Path file) {
    try {
      Path real = file.toRealPath();
      return real.startsWith(root)
          ? root.relativize(real).toString().replace(File.separatorChar, '/')
          : null;
    } catch (IOException gone) {
      return null;
    }
  }

  @Override
  public void close() {
    if (repository != null) {
      repository.close();
    }
  }
}
