package org.headhouse.linter.maven;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.apache.maven.plugin.MojoExecutionException;
import org.jspecify.annotations.Nullable;

/**
 * The files that hold for all sites.
 *
 * @param policy or null where there is none
 * @param deviceTypes or null where there is none
 */
record SettingsFiles(@Nullable Path policy, @Nullable Path deviceTypes) {

  /** What is named, else what lies beside the folder of sites. */
  static SettingsFiles find(Path sites, @Nullable File policy, @Nullable File deviceTypes)
      throws MojoExecutionException {
    return new SettingsFiles(
        find(sites, policy, "linter.policy", "linter.yaml"),
        find(sites, deviceTypes, "linter.deviceTypes", "device-types.yaml"));
  }

  private static @Nullable Path find(
      Path sites, @Nullable File named, String property, String usual)
      throws MojoExecutionException {
    if (named == null) {
      return beside(sites.toAbsolutePath().normalize(), usual);
    }
    if (!named.isFile()) {
      throw new MojoExecutionException(
          property
              + " names "
              + named
              + ", which is not a file: correct the path, or leave it out");
    }
    return named.toPath();
  }

  /** One file may stand for the folder that it lies in, or for the folder above that. */
  private static @Nullable Path beside(Path sites, String usual) {
    Path folder = sites.getParent();
    int steps = Files.isRegularFile(sites) ? 3 : 1;
    for (int step = 0; step < steps && folder != null; step++) {
      Path candidate = folder.resolve(usual);
      if (Files.isRegularFile(candidate)) {
        return candidate;
      }
      folder = folder.getParent();
    }
    return null;
  }

  List<Path> all() {
    return Stream.of(policy, deviceTypes)
        .filter(Objects::nonNull)
        .map(file -> file.toAbsolutePath().normalize())
        .toList();
  }
}
