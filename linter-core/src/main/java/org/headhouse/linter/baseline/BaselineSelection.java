package org.headhouse.linter.baseline;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.headhouse.linter.source.FolderBoundary;
import org.headhouse.linter.source.InputFile;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * Which baseline a linter uses.
 *
 * @param file the one that is given, or null for the one that the policy names
 * @param used whether it is read
 * @param base the folder that paths of inputs start at
 */
@Internal
public record BaselineSelection(@Nullable Path file, boolean used, Path base) {
  /** The file that the policy names, and paths from the current folder. */
  public static final BaselineSelection NAMED_BY_POLICY =
      new BaselineSelection(null, true, Path.of(""));

  /** The same with a given file. */
  public BaselineSelection in(Path given) {
    return new BaselineSelection(given, true, base);
  }

  /** The same without reading the file. */
  public BaselineSelection none() {
    return new BaselineSelection(file, false, base);
  }

  /** The same with the folder that paths of inputs start at. */
  public BaselineSelection shownFrom(Path folder) {
    return new BaselineSelection(file, used, folder);
  }

  /**
   * The file, or null where there is none.
   *
   * @param policy or null
   * @param named what the policy names, or null
   * @throws IOException where what the policy names cannot be a file
   */
  public @Nullable Path file(@Nullable InputFile policy, @Nullable String named)
      throws IOException {
    if (file != null || policy == null || named == null) {
      return file;
    }
    Path beside = policy.origin();
    if (beside == null) {
      return unreachable(
          policy,
          named,
          "the policy is no file that it could lie beside: give the builder the baseline itself, or none");
    }
    try {
      Path chosen = beside.toAbsolutePath().resolveSibling(named).normalize();
      return FolderBoundary.around(beside).contains(chosen)
          ? chosen
          : unreachable(
              policy,
              named,
              "that is outside its repository: name the file by the parameter of the baseline");
    } catch (InvalidPathException noPath) {
      return unreachable(policy, named, "that is no path");
    }
  }

  private @Nullable Path unreachable(InputFile policy, String named, String reason)
      throws IOException {
    if (used) {
      throw new IOException(policy.path() + " names the baseline \"" + named + "\", and " + reason);
    }
    return null;
  }

  /**
   * The baseline, or null where none is used.
   *
   * @throws UnusableBaseline where the file does not exist, or is damaged
   */
  public @Nullable Baseline read(@Nullable Path chosen) throws IOException {
    if (chosen == null || !used) {
      return null;
    }
    SitePaths paths = SitePaths.of(chosen, base);
    return Baseline.read(chosen, paths.shown(chosen), paths);
  }
}
