package org.headhouse.linter.revision;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.check.SiteReader;
import org.headhouse.linter.files.FoundFile;
import org.headhouse.linter.files.FoundSites;
import org.headhouse.linter.files.SettingsFiles;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.repository.SitePast;
import org.headhouse.linter.repository.SiteState;
import org.headhouse.linter.source.RegularFile;
import org.jspecify.annotations.Nullable;

/** The sites and device types of an earlier revision, found where those of today lie. */
public final class EarlierFiles {
  private final Revision revision;
  private final FoundSites found;
  private final Function<Path, String> shown;

  /**
   * Looks for nothing yet.
   *
   * @param found the sites of today
   * @param shown how a file is called in results
   */
  public EarlierFiles(Revision revision, FoundSites found, Function<Path, String> shown) {
    this.revision = revision;
    this.found = found;
    this.shown = shown;
  }

  /** The state of the repository then; the revision must stay open while it is used. */
  public SiteState state() throws UserError {
    try {
      List<Path> paths = paths();
      return SiteState.named(revision.name(), paths.stream().map(this::input), deviceTypes())
          .after(reader -> past(paths, reader));
    } catch (IOException failure) {
      throw UserError.of(
          revision.parameter() + ": " + revision.name() + " cannot be read", failure);
    }
  }

  /** The states before, and those up to now, read as that of the revision is. */
  private SitePast past(List<Path> earlier, SiteReader reader) {
    Map<String, Path> files = new HashMap<>();
    earlier.forEach(file -> files.put(shown.apply(file), file));
    found.files().forEach(file -> files.put(shown.apply(file.path()), file.path()));
    List<Path> types = placesOfTypes(found);
    return new PastStates(
        GitHistory.upTo(revision, found.sites(), types, false),
        GitHistory.upTo(revision, found.sites(), types, true),
        files,
        reader);
  }

  /** The files that were sites then. */
  private List<Path> paths() throws IOException {
    Path sites = found.sites();
    if (Files.isRegularFile(sites)) {
      return revision.read(sites).map(bytes -> List.of(sites)).orElse(List.of());
    }
    Set<Path> settings = new HashSet<>(SettingsFiles.usualPlaces(sites));
    settings.addAll(found.settings().all());
    return revision.below(sites).stream()
        .filter(found.names()::matches)
        .map(sites::resolve)
        .filter(
            file ->
                !settings.contains(file) && !settings.contains(file.toAbsolutePath().normalize()))
        .toList();
  }

  private SiteInput input(Path file) {
    return new SiteInput(
        shown.apply(file),
        most -> {
          byte[] bytes =
              revision.read(file).orElseThrow(() -> new NoSuchFileException(file.toString()));
          return bytes.length > most ? Arrays.copyOf(bytes, most) : bytes;
        });
  }

  /**
   * Where the device types may have been: those that are named today, then the usual places.
   *
   * @param found the sites of today
   */
  public static List<Path> placesOfTypes(FoundSites found) {
    return Stream.concat(
            Stream.ofNullable(found.settings().deviceTypes()),
            SettingsFiles.usualPlaces(found.sites(), "device-types.yaml"))
        .toList();
  }

  /** Those that are named today or were in one of the usual places then. */
  private @Nullable SiteInput deviceTypes() throws IOException {
    for (Path place : placesOfTypes(found)) {
      if (revision.read(place).isPresent()) {
        return input(place);
      }
    }
    return null;
  }

  /**
   * What differs.
   *
   * @param files as they are shown: those of today that differ, and those that are gone; all of
   *     them where something differs that holds for all
   * @param forAll that thing, or null
   */
  public record Changes(Set<String> files, @Nullable String forAll) {}

  /**
   * Compares the files of today.
   *
   * @param baseline the file with the results that are known today, if there is one
   */
  public Changes changes(Optional<Path> baseline) throws UserError {
    try {
      Path forAll = differingForAll(baseline);
      Set<String> changed = new HashSet<>();
      for (FoundFile file : found.files()) {
        if (forAll != null || file.refused() != null || differs(file.path())) {
          changed.add(shown.apply(file.path()));
        }
      }
      if (forAll != null) {
        found.settings().all().forEach(file -> changed.add(shown.apply(file)));
      }
      for (Path file : paths()) {
        if (Files.notExists(file)) {
          changed.add(shown.apply(file));
        }
      }
      return new Changes(changed, forAll == null ? null : shown.apply(forAll));
    } catch (IOException failure) {
      throw UserError.of(
          revision.parameter() + ": " + revision.name() + " cannot be compared", failure);
    }
  }

  /** A file in a usual place in only one of both states may hold for all sites there. */
  private @Nullable Path differingForAll(Optional<Path> baseline) throws IOException {
    Set<Path> forAll = new LinkedHashSet<>(SettingsFiles.usualPlaces(found.sites()));
    forAll.addAll(found.settings().all());
    baseline.ifPresent(forAll::add);
    forAll.addAll(new BuildFiles(revision).all(found.sites()));
    for (Path file : forAll) {
      boolean neverThere = Files.notExists(file) && revision.read(file).isEmpty();
      if (!neverThere && differs(file)) {
        return file;
      }
    }
    return null;
  }

  /** Without regard to line ends, which git may convert. A file that cannot be read differs. */
  private boolean differs(Path file) throws IOException {
    Optional<byte[]> then = revision.read(file);
    if (then.isEmpty()) {
      return true;
    }
    try (InputStream in = RegularFile.open(file)) {
      // Git may have added a return to each byte; a longer file differs.
      int most = (int) Math.min(2L * then.get().length + 1, Integer.MAX_VALUE);
      return !Arrays.equals(withoutReturns(then.get()), withoutReturns(in.readNBytes(most)));
    } catch (IOException lost) {
      return true;
    }
  }

  /** The content without the line ends that git may have added on checkout. */
  static byte[] withoutReturns(byte[] bytes) {
    byte[] kept = new byte[bytes.length];
    int length = 0;
    for (int i = 0; i < bytes.length; i++) {
      if (bytes[i] != '\r' || i + 1 == bytes.length || bytes[i + 1] != '\n') {
        kept[length++] = bytes[i];
      }
    }
    return Arrays.copyOf(kept, length);
  }
}
