package org.headhouse.linter.files;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.headhouse.linter.source.FolderBoundary;
import org.jspecify.annotations.Nullable;

/**
 * The files that hold for all sites.
 *
 * @param policy or null where there is none
 * @param deviceTypes or null where there is none
 */
public record SettingsFiles(@Nullable Path policy, @Nullable Path deviceTypes) {

  private static final String POLICY = "linter.yaml";
  private static final String DEVICE_TYPES = "device-types.yaml";

  /** The name of the folder of sites unless another is given. */
  private static final String USUAL_FOLDER = "sites";

  /**
   * What is named, else what lies beside the folder of sites, else in it. For one file, they are
   * those of the folder of sites that it lies in, so that the checks of both agree.
   *
   * @throws UserError where a file that is named is none
   */
  public static SettingsFiles find(
      Path sites, @Nullable Path policy, @Nullable Path deviceTypes, ParameterNames called)
      throws UserError {
    return new SettingsFiles(
        find(sites, policy, called.of("policy"), POLICY),
        find(sites, deviceTypes, called.of("deviceTypes"), DEVICE_TYPES));
  }

  private static @Nullable Path find(
      Path sites, @Nullable Path named, String parameter, String usual) throws UserError {
    if (named == null) {
      Path found = usual(sites.toAbsolutePath().normalize(), usual);
      if (found != null && !isOwn(found, sites)) {
        throw new UserError(
            found
                + " is a link that leads out of the repository, to nothing, into .git or to a"
                + " hidden file: put a copy in its place, or name its target by "
                + parameter);
      }
      if (found != null && !Files.isRegularFile(found)) {
        throw new UserError(
            found + " is not a file: put one in its place, or name another by " + parameter);
      }
      return found;
    }
    if (!Files.isRegularFile(named)) {
      throw new UserError(
          parameter
              + " names "
              + named
              + ", which is not a file: correct the path, or leave it out");
    }
    return named;
  }

  /**
   * What files belong to that nobody named: the repository with the folder of sites, or the folder
   * that holds it.
   *
   * @param sites the folder of sites, or one file
   */
  public static FolderBoundary boundary(Path sites) {
    return FolderBoundary.around(folderOfSites(sites.toAbsolutePath().normalize()));
  }

  /** A file that nobody named must not be what a link makes of it. */
  private static boolean isOwn(Path found, Path sites) {
    return !RealPath.of(found).getFileName().toString().startsWith(".")
        && boundary(sites).contains(found);
  }

  /** Whatever has the name: what is meant to hold for all sites must not be passed over. */
  private static @Nullable Path usual(Path sites, String name) {
    return places(folderOfSites(sites))
        .map(place -> place.resolve(name))
        .filter(file -> Files.exists(file, LinkOption.NOFOLLOW_LINKS))
        .findFirst()
        .orElse(null);
  }

  /**
   * Where a file of a name may be looked for, the first place first, whether it is there or not.
   */
  public static Stream<Path> usualPlaces(Path sites, String name) {
    return foldersOfSites(sites.toAbsolutePath().normalize()).stream()
        .flatMap(SettingsFiles::places)
        .map(place -> place.resolve(name))
        .distinct();
  }

  /** Where either file may have been in another state of the repository. */
  public static List<Path> usualPlaces(Path sites) {
    return Stream.of(POLICY, DEVICE_TYPES).flatMap(name -> usualPlaces(sites, name)).toList();
  }

  /**
   * What to report of files that are not read, although their names show what they are meant for.
   */
  public List<String> misnamed(Path sites) {
    return Stream.of(deviceTypes == null ? "device-types" : "", policy == null ? "linter" : "")
        .filter(stem -> !stem.isEmpty())
        .flatMap(stem -> misnamed(sites.toAbsolutePath().normalize(), stem))
        .toList();
  }

  private static Stream<String> misnamed(Path sites, String stem) {
    String usual = stem + ".yaml";
    return places(folderOfSites(sites))
        .distinct()
        .flatMap(folder -> meantFor(usual, folder))
        .map(file -> file + " is not read: name it " + usual);
  }

  private static Stream<Path> meantFor(String usual, Path folder) {
    // To list what is no folder would open it, and a pipe waits for a writer.
    if (!Files.isDirectory(folder)) {
      return Stream.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(file -> SiteLookAlikes.isMeant(String.valueOf(file.getFileName()), usual))
          .filter(Files::isRegularFile)
          .sorted()
          .toList()
          .stream();
    } catch (IOException unreadable) {
      return Stream.of();
    }
  }

  /** The folder that settings lie in. */
  public Path home(Path sites) {
    Path whole = sites.toAbsolutePath().normalize();
    return all().stream()
        .map(file -> file.toAbsolutePath().normalize().getParent())
        .filter(Objects::nonNull)
        .findFirst()
        .or(() -> places(folderOfSites(whole)).findFirst())
        .orElse(whole);
  }

  /** Beside a folder of sites, then in it. */
  private static Stream<Path> places(Path folder) {
    return Stream.of(folder.getParent(), folder).filter(Objects::nonNull);
  }

  /**
   * The folder of sites that is meant, the same for policy and device types: the first that has
   * either beside it or in it.
   */
  private static Path folderOfSites(Path sites) {
    List<Path> folders = foldersOfSites(sites);
    return folders.stream()
        .filter(folder -> places(folder).anyMatch(SettingsFiles::hasSettings))
        .findFirst()
        .orElse(folders.get(0));
  }

  private static boolean hasSettings(Path place) {
    return Files.isRegularFile(place.resolve(POLICY))
        || Files.isRegularFile(place.resolve(DEVICE_TYPES));
  }

  /**
   * The folders that may be the folder of sites, the likeliest first. A file lies in it, or in a
   * folder of its own in it; only the usual name shows which. A folder above the repository is not
   * the folder of sites.
   */
  private static List<Path> foldersOfSites(Path sites) {
    Path own = sites.getParent();
    if (own == null || !Files.isRegularFile(sites)) {
      return List.of(sites);
    }
    Path above = own.getParent();
    boolean known = own.endsWith(USUAL_FOLDER) || Files.exists(own.resolveSibling(".git"));
    return above == null || known ? List.of(own) : List.of(above, own);
  }

  /** Whether a file is one of them, also by another name or a link. */
  public boolean contains(Path file) {
    Path real = RealPath.of(file);
    return all().stream().anyMatch(one -> RealPath.of(one).equals(real));
  }

  /** Those that there are. */
  public List<Path> all() {
    return Stream.of(policy, deviceTypes).filter(Objects::nonNull).toList();
  }
}
