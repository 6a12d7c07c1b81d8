package org.headhouse.linter.revision;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.headhouse.linter.check.SiteReader;
import org.headhouse.linter.report.FileHistory;
import org.headhouse.linter.repository.SitePast;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.jspecify.annotations.Nullable;

/** What the history of git says of files before an earlier state. Each is looked up once. */
final class PastStates implements SitePast {
  /** In what every file has that says, or once said, that its line is in operation. */
  private static final String MARK = "commission";

  private final GitHistory before;
  private final GitHistory whole;
  private final Map<String, Path> files;
  private final SiteReader reader;
  private final Map<String, Optional<Site>> proved = new ConcurrentHashMap<>();
  private final Map<String, Boolean> live = new ConcurrentHashMap<>();

  /**
   * Looks for nothing yet.
   *
   * @param before the history up to the earlier state
   * @param whole the same and that up to now
   * @param files where each file is, or was in the earlier state, that results show
   */
  PastStates(GitHistory before, GitHistory whole, Map<String, Path> files, SiteReader reader) {
    this.before = before;
    this.whole = whole;
    this.files = Map.copyOf(files);
    this.reader = reader;
  }

  @Override
  public @Nullable Site proved(String path) {
    return proved
        .computeIfAbsent(path, it -> Optional.ofNullable(lastCommissioned(it)))
        .orElse(null);
  }

  private @Nullable Site lastCommissioned(String path) {
    Path file = files.get(path);
    if (file != null) {
      for (GitHistory.PastState state : before.past(file).states()) {
        try {
          byte[] content = state.content().read();
          if (isProved(path, content)) {
            return reader(state.deviceTypes().get()).read(path, content);
          }
        } catch (IOException unreadable) {
          // The state after it was planned, and what was before cannot be told from this one.
          return null;
        }
      }
    }
    return null;
  }

  /** Each state is read with the device types of its own revision. */
  private SiteReader reader(FileHistory.@Nullable Content types) throws IOException {
    return types == null ? reader : SiteState.reader("", types.read());
  }

  /** Device types decide nothing of it, and are read for the one state alone that is compared. */
  private boolean isProved(String path, byte[] content) {
    Site site = hasMark(content) ? reader.read(path, content) : null;
    return site != null && site.stage().is(Stage.COMMISSIONED) && site.commissioning().isGiven();
  }

  @Override
  public boolean mayHaveBeenLive(String path) {
    return live.computeIfAbsent(path, this::isAnyLive);
  }

  private boolean isAnyLive(String path) {
    Path file = files.get(path);
    if (file == null) {
      return false;
    }
    GitHistory.Past past = whole.past(file);
    try {
      for (GitHistory.PastState state : past.states()) {
        if (isLive(path, state.content().read())) {
          return true;
        }
      }
    } catch (IOException unreadable) {
      return true;
    }
    return !past.isWhole();
  }

  /** A state that is no YAML counts as live where it has the words for it. */
  private boolean isLive(String path, byte[] content) {
    if (!hasMark(content)) {
      return false;
    }
    Site site = reader.read(path, content);
    return site == null || site.stage().is(Stage.COMMISSIONED) || !site.commissioning().isMissing();
  }

  /** Hundreds of states of a plan are not read as YAML only to find nothing. */
  private static boolean hasMark(byte[] content) {
    return new String(content, UTF_8).contains(MARK);
  }
}
