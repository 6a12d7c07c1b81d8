package org.headhouse.linter.revision;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.FileMode;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.revwalk.RevCommit;
import org.eclipse.jgit.revwalk.RevWalk;
import org.eclipse.jgit.treewalk.TreeWalk;
import org.eclipse.jgit.treewalk.filter.AndTreeFilter;
import org.eclipse.jgit.treewalk.filter.PathFilterGroup;
import org.eclipse.jgit.treewalk.filter.TreeFilter;
import org.headhouse.linter.source.Limits;
import org.jspecify.annotations.Nullable;

/**
 * What revisions did to the files of a folder, and to the device types beside it, found in one
 * walk. A file that a revision moved has the states of both places. Not changed any more once it is
 * made.
 */
final class GitWalk {
  /** Nothing is known. */
  static final GitWalk NOTHING = new GitWalk(Path.of(""), List.of(), false);

  private static final int SHOWN_DIGITS = 12;
  private static final Pattern ID = Pattern.compile("(?m)^site:[ \\t]*(\\S+)");

  private final Path root;
  private final List<String> typePlaces;
  private final boolean isWhole;
  private final Map<String, List<State>> states = new HashMap<>();
  private final Map<String, List<Move>> moves = new HashMap<>();
  private final List<Point> ofTypes = new ArrayList<>();
  private int age;

  /**
   * The content that a file has in a revision.
   *
   * @param age how many revisions were met before that one
   */
  record State(ObjectId commit, ObjectId blob, int age) {
    String shown() {
      return commit.getName().substring(0, SHOWN_DIGITS);
    }
  }

  /** A revision. */
  private record Point(RevCommit commit, int age) {}

  /** That a revision moved a file from another place. */
  private record Move(String from, int age) {}

  private GitWalk(Path root, List<String> typePlaces, boolean isWhole) {
    this.root = root;
    this.typePlaces = typePlaces;
    this.isWhole = isWhole;
  }

  /**
   * Walks from the newest revisions to the oldest.
   *
   * @param newest where to start
   * @param folder whose files are looked at
   * @param deviceTypes where their file may be, the first place first
   */
  static GitWalk of(Repository from, List<ObjectId> newest, Path folder, List<Path> deviceTypes)
      throws IOException {
    Path root = from.getWorkTree().toPath().toRealPath();
    String below = path(root, folder);
    if (newest.isEmpty() || below == null) {
      return NOTHING;
    }
    List<String> places =
        deviceTypes.stream().map(file -> path(root, file)).filter(Objects::nonNull).toList();
    GitWalk walk =
        new GitWalk(root, places, from.getObjectDatabase().getShallowCommits().isEmpty());
    List<String> all = new ArrayList<>(places);
    all.add(below);
    TreeFilter inside = below.isEmpty() ? TreeFilter.ALL : PathFilterGroup.createFromStrings(all);
    try (RevWalk commits = new RevWalk(from)) {
      for (ObjectId start : newest) {
        commits.markStart(commits.parseCommit(start));
      }
      commits.setTreeFilter(AndTreeFilter.create(inside, TreeFilter.ANY_DIFF));
      for (RevCommit commit : commits) {
        walk.add(from, commits, commit, inside);
        walk.age++;
      }
    }
    return walk;
  }

  /** The files that have another content than in every parent. */
  private void add(Repository from, RevWalk commits, RevCommit commit, TreeFilter inside)
      throws IOException {
    Map<String, ObjectId> come = new HashMap<>();
    Map<String, ObjectId> gone = new HashMap<>();
    try (TreeWalk trees = new TreeWalk(from)) {
      trees.addTree(commit.getTree());
      for (RevCommit parent : commit.getParents()) {
        trees.addTree(commits.parseCommit(parent).getTree());
      }
      trees.setRecursive(true);
      trees.setFilter(AndTreeFilter.create(inside, TreeFilter.ANY_DIFF));
      while (trees.next()) {
        String path = trees.getPathString();
        if (!isNew(trees)) {
          continue;
        }
        if (typePlaces.contains(path)) {
          ofTypes.add(new Point(commit, age));
        }
        if (isFile(trees, 0)) {
          states
              .computeIfAbsent(path, it -> new ArrayList<>())
              .add(new State(commit.getId().copy(), trees.getObjectId(0), age));
          if (trees.getTreeCount() > 1 && !isFile(trees, 1)) {
            come.put(path, trees.getObjectId(0));
          }
        } else if (trees.getTreeCount() > 1 && isFile(trees, 1)) {
          gone.put(path, trees.getObjectId(1));
        }
      }
    }
    if (!come.isEmpty() && !gone.isEmpty()) {
      moved(from, come, gone);
    }
  }

  private static boolean isNew(TreeWalk trees) {
    for (int parent = 1; parent < trees.getTreeCount(); parent++) {
      if (trees.getObjectId(0).equals(trees.getObjectId(parent))) {
        return false;
      }
    }
    return true;
  }

  private static boolean isFile(TreeWalk trees, int tree) {
    FileMode mode = trees.getFileMode(tree);
    return mode.equals(FileMode.REGULAR_FILE) || mode.equals(FileMode.EXECUTABLE_FILE);
  }

  /** A file is another one in its new place if its content, or else the id of its site, is. */
  private void moved(Repository from, Map<String, ObjectId> come, Map<String, ObjectId> gone) {
    Map<ObjectId, String> byContent = new HashMap<>();
    gone.forEach((path, blob) -> byContent.put(blob, path));
    Map<String, String> byId = new HashMap<>();
    if (!byContent.keySet().containsAll(come.values())) {
      gone.forEach((path, blob) -> byId.put(id(from, blob), path));
    }
    come.forEach(
        (path, blob) -> {
          String old = byContent.get(blob);
          if (old == null && !byId.isEmpty()) {
            String id = id(from, blob);
            old = id.isEmpty() ? null : byId.get(id);
          }
          if (old != null) {
            moves.computeIfAbsent(path, it -> new ArrayList<>()).add(new Move(old, age));
          }
        });
  }

  /** The id of a site as it is written, or nothing where none is found. */
  private static String id(Repository from, ObjectId blob) {
    try {
      byte[] bytes = from.open(blob, Constants.OBJ_BLOB).getCachedBytes(Limits.DEFAULT.bytes());
      Matcher id = ID.matcher(new String(bytes, UTF_8));
      return id.find() ? id.group(1) : "";
    } catch (IOException unreadable) {
      return "";
    }
  }

  /** Whether no revision was left out when the repository was cloned. */
  boolean isWhole() {
    return isWhole;
  }

  /** The states of a file, the newest first; none of what is outside or was never committed. */
  List<State> states(Path file) {
    String path = path(root, file);
    return path == null ? List.of() : states(path, 0);
  }

  private List<State> states(String path, int from) {
    Move move = moveOf(path, from);
    List<State> found = new ArrayList<>();
    for (State state : states.getOrDefault(path, List.of())) {
      if (state.age() >= from && (move == null || state.age() <= move.age())) {
        found.add(state);
      }
    }
    if (move != null) {
      found.addAll(states(move.from(), move.age() + 1));
    }
    return found;
  }

  private @Nullable Move moveOf(String path, int from) {
    return moves.getOrDefault(path, List.of()).stream()
        .filter(move -> move.age() >= from)
        .findFirst()
        .orElse(null);
  }

  /** The states of a file, with those in which only the device types beside it are others. */
  List<State> withTypes(Repository from, List<State> own, Path file) {
    String path = path(root, file);
    if (ofTypes.isEmpty() || path == null) {
      return own;
    }
    List<State> all = new ArrayList<>(own);
    for (Point point : ofTypes) {
      ObjectId blob = blob(from, placeAt(path, point.age()), point.commit());
      if (blob != null) {
        all.add(new State(point.commit().getId().copy(), blob, point.age()));
      }
    }
    all.sort(Comparator.comparing(State::age));
    return all;
  }

  private String placeAt(String path, int when) {
    String place = path;
    int from = 0;
    for (Move move = moveOf(place, from); move != null && move.age() < when; ) {
      place = move.from();
      from = move.age() + 1;
      move = moveOf(place, from);
    }
    return place;
  }

  /** The file of device types of a revision, or null where it has none. */
  @Nullable ObjectId types(Repository from, ObjectId commit) {
    try (RevWalk commits = new RevWalk(from)) {
      RevCommit parsed = commits.parseCommit(commit);
      return typePlaces.stream()
          .map(place -> blob(from, place, parsed))
          .filter(Objects::nonNull)
          .findFirst()
          .orElse(null);
    } catch (IOException lost) {
      return null;
    }
  }

  private static @Nullable ObjectId blob(Repository from, String path, RevCommit commit) {
    try (TreeWalk trees = TreeWalk.forPath(from, path, commit.getTree())) {
      return trees == null || !isFile(trees, 0) ? null : trees.getObjectId(0);
    } catch (IOException lost) {
      return null;
    }
  }

  /** From the top of the work tree, whatever links lead there; null for what is outside. */
  private static @Nullable String path(Path root, Path file) {
    Path whole = file.toAbsolutePath().normalize();
    Path there = whole;
    while (!Files.exists(there) && there.getParent() != null) {
      there = there.getParent();
    }
    try {
      Path real = there.toRealPath().resolve(there.relativize(whole)).normalize();
      return real.startsWith(root)
          ? root.relativize(real).toString().replace(File.separatorChar, '/')
          : null;
    } catch (IOException gone) {
      return null;
    }
  }
}
