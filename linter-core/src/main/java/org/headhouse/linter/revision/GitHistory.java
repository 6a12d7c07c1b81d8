package org.headhouse.linter.revision;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.eclipse.jgit.errors.LargeObjectException;
import org.eclipse.jgit.lib.Constants;
import org.eclipse.jgit.lib.ObjectId;
import org.eclipse.jgit.lib.ObjectInserter;
import org.eclipse.jgit.lib.Repository;
import org.eclipse.jgit.storage.file.FileRepositoryBuilder;
import org.headhouse.linter.report.FileHistory;
import org.headhouse.linter.report.SiteHistory;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.source.Limits;
import org.headhouse.linter.source.RegularFile;
import org.jspecify.annotations.Nullable;

/**
 * The states of files in the revisions before the one that is checked out, with the device types of
 * each. All revisions are walked once, when the first file is asked for. A repository that cannot
 * be read is none.
 */
public final class GitHistory implements SiteHistory, AutoCloseable {
  private final @Nullable Repository repository;
  private final Path folder;
  private final List<Path> deviceTypes;
  private final @Nullable ObjectId end;
  private final boolean andNow;
  private final Map<ObjectId, Optional<ObjectId>> typesOf = new ConcurrentHashMap<>();
  private @Nullable GitWalk walked;

  private GitHistory(
      @Nullable Repository repository,
      Path folder,
      List<Path> deviceTypes,
      @Nullable ObjectId end,
      boolean andNow) {
    this.repository = repository;
    this.folder = folder;
    this.deviceTypes = deviceTypes;
    this.end = end;
    this.andNow = andNow;
  }

  /**
   * The history of what is in a folder, up to a revision. It must not be used after the revision is
   * closed, which closes all.
   *
   * @param inside a folder or a file
   * @param deviceTypes where their file may be, the first place first
   * @param andNow whether it is also that up to the revision that is checked out
   */
  static GitHistory upTo(Revision revision, Path inside, List<Path> deviceTypes, boolean andNow) {
    return new GitHistory(
        revision.repository(),
        inside.toAbsolutePath().normalize(),
        deviceTypes,
        revision.commit(),
        andNow);
  }

  /**
   * The history of what is in a folder.
   *
   * @param inside a folder or a file
   * @param deviceTypes where their file may be, the first place first
   */
  public static GitHistory open(Path inside, List<Path> deviceTypes) {
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
          return new GitHistory(repository, path, deviceTypes, null, true);
        }
        repository.close();
      }
    } catch (IOException | IllegalArgumentException unreadable) {
      // Sheets do not need it: they say that the history was not at hand.
    }
    return new GitHistory(null, path, deviceTypes, null, true);
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
    GitWalk all = walked(repository);
    List<GitWalk.State> states = all.states(origin);
    if (states.isEmpty()) {
      return FileHistory.UNKNOWN;
    }
    Set<ObjectId> now = ids(content);
    Set<ObjectId> typesNow = typesNow();
    GitWalk.State newest = states.get(0);
    String revision =
        now.contains(newest.blob())
            ? newest.shown()
            : "changed since " + newest.shown() + ", and not committed";
    Map<String, FileHistory.Version> earlier = new LinkedHashMap<>();
    for (GitWalk.State state : all.withTypes(repository, states, origin)) {
      ObjectId types = types(repository, all, state);
      ObjectId others = types == null || typesNow.contains(types) ? null : types;
      if (!now.contains(state.blob()) || others != null) {
        earlier.putIfAbsent(
            state.blob().name() + (others == null ? "" : others.name()),
            new FileHistory.Version(
                state.shown(),
                () -> read(repository, state.blob()),
                others == null ? null : () -> read(repository, others)));
      }
    }
    return new FileHistory(true, revision, List.copyOf(earlier.values()), all.isWhole());
  }

  /** The file of device types of a revision, or null where it had none. */
  private @Nullable ObjectId types(Repository from, GitWalk all, GitWalk.State state) {
    return typesOf
        .computeIfAbsent(state.commit(), commit -> Optional.ofNullable(all.types(from, commit)))
        .orElse(null);
  }

  /** The device types as they are now. */
  private Set<ObjectId> typesNow() {
    for (Path place : deviceTypes) {
      if (Files.isRegularFile(place)) {
        try (InputStream in = RegularFile.open(place)) {
          return ids(in.readNBytes(Limits.DEFAULT.bytes()));
        } catch (IOException unreadable) {
          return Set.of();
        }
      }
    }
    return Set.of();
  }

  /**
   * The states of a file, whatever it is now.
   *
   * @param states the newest first
   * @param isWhole whether these are all of them
   */
  record Past(List<PastState> states, boolean isWhole) {}

  /**
   * One of them.
   *
   * @param deviceTypes finds those of the revision, or gives null where it had none
   */
  record PastState(
      FileHistory.Content content, Supplier<FileHistory.@Nullable Content> deviceTypes) {}

  Past past(Path file) {
    if (repository == null) {
      return new Past(List.of(), true);
    }
    GitWalk all = walked(repository);
    List<PastState> found = new ArrayList<>();
    for (GitWalk.State state : all.states(file)) {
      found.add(
          new PastState(
              () -> read(repository, state.blob()), () -> typesOf(repository, all, state)));
    }
    return new Past(found, all.isWhole());
  }

  private FileHistory.@Nullable Content typesOf(Repository from, GitWalk all, GitWalk.State state) {
    ObjectId types = types(from, all, state);
    return types == null ? null : () -> read(from, types);
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

  private synchronized GitWalk walked(Repository from) {
    GitWalk known = walked;
    if (known == null) {
      try {
        ObjectId head = andNow ? from.resolve(Constants.HEAD) : null;
        known =
            GitWalk.of(
                from, Stream.of(end, head).filter(Objects::nonNull).toList(), folder, deviceTypes);
      } catch (IOException | RuntimeException damaged) {
        known = GitWalk.NOTHING;
      }
      walked = known;
    }
    return known;
  }

  @Override
  public void close() {
    if (repository != null) {
      repository.close();
    }
  }
}
