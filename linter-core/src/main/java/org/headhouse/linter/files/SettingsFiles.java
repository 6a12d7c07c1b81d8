package org.headhouse.linter.files;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * The files that hold for all sites.
 *
 * @param policy or null where there is none
 * @param deviceTypes or null where there is none
 */
public record SettingsFiles(@Nullable Path policy, @Nullable Path deviceTypes) {

  /**
   * What is named, else what lies beside the folder of sites, else in it. One file is looked at
   * like its folder, so that the checks of both agree.
   *
   * @throws Trouble where a file that is named is none
   */
  public static SettingsFiles find(
      Path sites, @Nullable Path policy, @Nullable Path deviceTypes, ParameterNames called)
      throws Trouble {
    return new SettingsFiles(
        find(sites, policy, called.of("policy"), "linter.yaml"),
        find(sites, deviceTypes, called.of("deviceTypes"), "device-types.yaml"));
  }

  private static @Nullable Path find(
      Path sites, @Nullable Path named, String parameter, String usual) throws Trouble {
    if (named == null) {
      return usual(sites.toAbsolutePath().normalize(), usual);
    }
    if (!Files.isRegularFile(named)) {
      throw new Trouble(
          parameter
              + " names "
              + named
              + ", which is not a file: correct the path, or leave it out");
    }
    return named;
  }

  private static @Nullable Path usual(Path sites, String name) {
    return usualPlaces(sites, name).filter(Files::isRegularFile).findFirst().orElse(null);
  }

  /** Where a file of a name is looked for, the first place first, whether it is there or not. */
  public static Stream<Path> usualPlaces(Path sites, String name) {
    return places(sites.toAbsolutePath().normalize()).map(place -> place.resolve(name));
  }

  /** Where either file may have been in another state of the repository. */
  public static List<Path> usualPlaces(Path sites) {
    return Stream.of("linter.yaml", "device-types.yaml")
        .flatMap(name -> usualPlaces(sites, name))
        .toList();
  }

  /**
   * What to tell of files that are not read, although their names say what they are meant to be.
   */
  public List<String> misnamed(Path sites) {
    return Stream.of(deviceTypes == null ? "device-types" : "", policy == null ? "linter" : "")
        .filter(stem -> !stem.isEmpty())
        .flatMap(stem -> misnamed(sites.toAbsolutePath().normalize(), stem))
        .toList();
  }

  private static Stream<String> misnamed(Path sites, String stem) {
    return Stream.of(stem + ".yml", stem + ".json")
        .map(name -> usual(sites, name))
        .filter(Objects::nonNull)
        .map(file -> file + " is not read: name it " + stem + ".yaml");
  }

  /** The folder that settings lie in. */
  public Path home(Path sites) {
    Path whole = sites.toAbsolutePath().normalize();
    return all().stream()
        .map(file -> file.toAbsolutePath().normalize().getParent())
        .filter(Objects::nonNull)
        .findFirst()
        .or(() -> places(whole).findFirst())
        .orElse(whole);
  }

  /** The folder of one file may be that of the site alone, with the folder of sites above it. */
  private static Stream<Path> places(Path sites) {
    Path above = sites.getParent();
    if (above == null || !Files.isRegularFile(sites)) {
      return Stream.of(above, sites).filter(Objects::nonNull);
    }
    Path secondAbove = above.getParent();
    Path thirdAbove = secondAbove == null ? null : secondAbove.getParent();
    return Stream.of(secondAbove, thirdAbove, above).filter(Objects::nonNull);
  }

  /** Those that there are. */
  public List<Path> all() {
    return Stream.of(policy, deviceTypes).filter(Objects::nonNull).toList();
  }
}
