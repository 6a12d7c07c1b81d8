package org.headhouse.linter.revision;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.eclipse.jgit.errors.AmbiguousObjectException;
import org.eclipse.jgit.errors.IncorrectObjectTypeException;
import org.eclipse.jgit.errors.LargeObjectException;
import org.eclipse.jgit.errors.MissingObjectException;
import org.eclipse.jgit.errors.RevisionSyntaxException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Ref;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.PathFilter;
import org.headhouse.linter.files.ParameterNames;
import org.headhouse.linter.files.UserError;
import org.jspecify.annotations.Nullable;

/**
 * The files of one revision of a git repository, named by where they would lie in its work tree.
 */
public final class Revision implements AutoCloseable {
  private final String name;
  private final String since;
  private final Repository repository;
  private final Path root;
  private final RevCommit commit;

  private Revision(String name, String since, Repository repository, Path root, RevCommit commit) {
    this.name = name;
    this.since = since;
    this.repository = repository;
    this.root = root;
    this.commit = commit;
  }

  /**
   * Looks up a revision.
   *
   * @param inside a file or folder of the work tree, which need not exist
   * @param name as git takes it
   * @param called how the user writes the parameter {@code since}
   * @throws UserError where there is no such revision or no repository, or it cannot be read
   */
  public static Revision open(Path inside, String name, ParameterNames called) throws UserError {
    return open(inside, name, called, "leave out " + called.of("since"));
  }

  /**
   * Looks up a revision.
   *
   * @param inside a file or folder of the work tree, which need not exist
   * @param name as git takes it
   * @param called how the user writes the parameter {@code since}
   * @param otherwise what to do where no repository can be read
   * @throws UserError where there is no such revision or no repository, or it cannot be read
   */
  public static Revision open(Path inside, String name, ParameterNames called, String otherwise)
      throws UserError {
    HermeticSystemReader.use();
    String since = called.of("since");
    try {
      Repository repository = repository(inside, name, since, otherwise);
      try {
        return new Revision(
            name,
            since,
            repository,
            repository.getWorkTree().toPath().toRealPath(),
            commit(repository, name, since, otherwise));
      } catch (IOException | UserError | RuntimeException failure) {
        repository.close();
        throw failure;
      }
    } catch (IOException failure) {
      throw UserError.of(since + ": the git repository cannot be read", failure);
    } catch (IllegalArgumentException damaged) {
      throw new UserError(
          since
              + ": the configuration of the git repository is damaged: git config --list says"
              + " where",
          damaged);
    }
  }

  /**
   * Looks up the last commit.
   *
   * @param inside a file or folder of the work tree, which need not exist
   * @param called how the user writes the parameter {@code since}
   * @return null where there is no repository, or none with a commit
   * @throws UserError where there may be a commit, and it cannot be read
   */
  public static @Nullable Revision last(Path inside, ParameterNames called) throws UserError {
    return hasNoCommit(inside) ? null : open(inside, Constants.HEAD, called);
  }

  private static boolean hasNoCommit(Path inside) {
    HermeticSystemReader.use();
    try {
      FileRepositoryBuilder builder = builder(inside);
      if (broken(inside, builder) != null) {
        return false;
      }
      if (builder.getGitDir() == null) {
        return true;
      }
      try (Repository repository = builder.build()) {
        Ref head = repository.exactRef(Constants.HEAD);
        return repository.isBare() || (head != null && head.getObjectId() == null);
      }
    } catch (IOException | IllegalArgumentException unreadable) {
      return false;
    }
  }

  private static FileRepositoryBuilder builder(Path inside) throws IOException {
    return new FileRepositoryBuilder()
        .readEnvironment()
        .findGitDir(nearestFolder(inside).toRealPath().toFile());
  }

  private static Repository repository(Path inside, String name, String since, String otherwise)
      throws IOException, UserError {
    FileRepositoryBuilder builder = builder(inside);
    Path broken = broken(inside, builder);
    if (broken != null) {
      throw new UserError(
          since
              + ": "
              + broken
              + " is damaged or leads nowhere: git status says what is wrong with it");
    }
    if (builder.getGitDir() == null) {
      throw new UserError(
          since
              + " is "
              + name
              + ", and "
              + inside
              + " is not in a git repository: run it in one, or "
              + otherwise);
    }
    Repository repository = builder.build();
    if (repository.isBare()) {
      repository.close();
      throw new UserError(
          since + " is " + name + ", and the git repository has no work tree: clone it");
    }
    return repository;
  }

  /** What is called .git above a path and is no repository; null where there is no such thing. */
  private static @Nullable Path broken(Path inside, FileRepositoryBuilder builder) {
    if (builder.getGitDir() != null && builder.getGitDir().isDirectory()) {
      return null;
    }
    for (Path folder = nearestFolder(inside); folder != null; folder = folder.getParent()) {
      Path git = folder.resolve(Constants.DOT_GIT);
      if (Files.exists(git)) {
        return git;
      }
    }
    return null;
  }

  private static Path nearestFolder(Path inside) {
    Path folder = inside.toAbsolutePath().normalize();
    while (!Files.isDirectory(folder) && folder.getParent() != null) {
      folder = folder.getParent();
    }
    return folder;
  }

  private static RevCommit commit(
      Repository repository, String name, String since, String otherwise)
      throws IOException, UserError {
    requireReadable(repository, name, since, otherwise);
    try (RevWalk walk = new RevWalk(repository)) {
      ObjectId id = repository.resolve(inFull(name) + "^{commit}");
      if (id != null) {
        return walk.parseCommit(id);
      }
    } catch (AmbiguousObjectException ambiguous) {
      throw new UserError(
          since + ": several revisions start with " + name + ": give more of it", ambiguous);
    } catch (RevisionSyntaxException | IncorrectObjectTypeException noRevision) {
      throw new UserError(
          since + ": " + name + " is not a revision: use for example HEAD~1 or origin/main",
          noRevision);
    } catch (MissingObjectException missing) {
      throw lacking(repository, name, since);
    }
    throw lacking(repository, name, since);
  }

  /** What the library for git cannot do. */
  private static void requireReadable(
      Repository repository, String name, String since, String otherwise) throws UserError {
    String hash = repository.getConfig().getString("extensions", null, "objectformat");
    if (hash != null && !hash.equalsIgnoreCase("sha1")) {
      throw new UserError(
          since
              + ": the git repository uses "
              + hash
              + ", and only repositories with sha1 can be read: "
              + otherwise);
    }
    if (name.startsWith(":/") || name.contains("^{/")) {
      throw new UserError(
          since
              + ": "
              + name
              + " searches the messages of commits, which is not supported: use the number that"
              + " git rev-parse prints for it");
    }
  }

  /** Git takes a single @ for HEAD. */
  private static String inFull(String name) {
    return name.matches("@(?:[~^].*)?") ? Constants.HEAD + name.substring(1) : name;
  }

  private static UserError lacking(Repository repository, String name, String since)
      throws IOException {
    if (!repository.getObjectDatabase().getShallowCommits().isEmpty()) {
      return new UserError(
          since
              + ": this clone is shallow and lacks the revision "
              + name
              + ": fetch the history as well, with git fetch --unshallow");
    }
    if (repository.resolve(Constants.HEAD) == null) {
      return new UserError(since + ": the git repository has no revision yet: commit first");
    }
    return new UserError(
        since
            + ": there is no revision "
            + name
            + ": use one that git log shows, or a branch or tag that is fetched");
  }

  /** As it was asked for. */
  public String name() {
    return name;
  }

  /** How the user writes the parameter that names it. */
  String parameter() {
    return since;
  }

  /** Where it comes from; it is closed with this. */
  Repository repository() {
    return repository;
  }

  /** The commit itself. */
  ObjectId commit() {
    return commit;
  }

  /** The top of the work tree, without links. */
  Path root() {
    return root;
  }

  /** The files below a folder, by their paths from there, in their order; none where it is not. */
  List<String> below(Path folder) throws IOException {
    String path = path(folder);
    List<String> names = new ArrayList<>();
    if (path == null) {
      return names;
    }
    try (TreeWalk walk = new TreeWalk(repository)) {
      walk.addTree(commit.getTree());
      walk.setRecursive(true);
      if (!path.isEmpty()) {
        walk.setFilter(PathFilter.create(path));
      }
      while (walk.next()) {
        String file = walk.getPathString();
        if (isFile(walk) && (path.isEmpty() || file.startsWith(path + "/"))) {
          names.add(path.isEmpty() ? file : file.substring(path.length() + 1));
        }
      }
    }
    Collections.sort(names);
    return names;
  }

  /** The bytes of a file, where the revision has one there. */
  Optional<byte[]> read(Path file) throws IOException {
    String path = path(file);
    if (path == null || path.isEmpty()) {
      return Optional.empty();
    }
    try (TreeWalk walk = TreeWalk.forPath(repository, path, commit.getTree())) {
      return walk == null || !isFile(walk)
          ? Optional.empty()
          : Optional.of(repository.open(walk.getObjectId(0), Constants.OBJ_BLOB).getBytes());
    } catch (LargeObjectException tooLarge) {
      throw new IOException(path + " is too large", tooLarge);
    }
  }

  private static boolean isFile(TreeWalk walk) {
    FileMode mode = walk.getFileMode(0);
    return mode.equals(FileMode.REGULAR_FILE) || mode.equals(FileMode.EXECUTABLE_FILE);
  }

  /** From the top of the work tree, whatever links lead there; null for what lies outside. */
  private @Nullable String path(Path file) throws IOException {
    Path folder = nearestFolder(file);
    Path rest = folder.relativize(file.toAbsolutePath().normalize());
    Path real = folder.toRealPath().resolve(rest).normalize();
    return real.startsWith(root)
        ? root.relativize(real).toString().replace(File.separatorChar, '/')
        : null;
  }

  @Override
  public void close() {
    repository.close();
  }
}
