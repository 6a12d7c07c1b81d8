package org.headhouse.linter;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import org.headhouse.linter.baseline.Baseline;
import org.headhouse.linter.baseline.SitePaths;
import org.jspecify.annotations.Nullable;

/**
 * Which baseline a linter uses.
 *
 * @param file the one that is given, or null for the one that the policy names
 * @param used whether it is read
 * @param base the folder that paths of inputs start at
 */
record KnownResults(@Nullable Path file, boolean used, Path base) {
  static final KnownResults NAMED_BY_POLICY = new KnownResults(null, true, Path.of(""));

  KnownResults in(Path given) {
    return new KnownResults(given, true, base);
  }

  KnownResults none() {
    return new KnownResults(file, false, base);
  }

  KnownResults shownFrom(Path folder) {
    return new KnownResults(file, used, folder);
  }

  /** The file, or null where there is none. */
  @Nullable Path file(@Nullable SiteInput policy, @Nullable String named) throws IOException {
    if (file != null || policy == null || named == null) {
      return file;
    }
    Path beside = policy.source();
    if (beside == null) {
      return unreachable(
          policy,
          named,
          "the policy is no file that it could lie beside: give the builder the baseline itself, or none");
    }
    try {
      return beside.toAbsolutePath().resolveSibling(named).normalize();
    } catch (InvalidPathException noPath) {
      return unreachable(policy, named, "that is no path");
    }
  }

  private @Nullable Path unreachable(SiteInput policy, String named, String reason)
      throws IOException {
    if (used) {
      throw new IOException(policy.path() + " names the baseline \"" + named + "\", and " + reason);
    }
    return null;
  }

  @Nullable Baseline read(@Nullable Path chosen) throws IOException {
    if (chosen == null || !used) {
      return null;
    }
    SitePaths paths = SitePaths.of(chosen, base);
    return Baseline.read(chosen, paths.shown(chosen), paths);
  }
}
