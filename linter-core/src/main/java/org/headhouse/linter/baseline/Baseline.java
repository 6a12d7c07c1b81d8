package org.headhouse.linter.baseline;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import org.headhouse.linter.result.Identity;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.source.RegularFile;

/** Results that were there before, each with how often. Immutable. */
public final class Baseline {
  private final SortedMap<Entry, Integer> entries;
  private final SitePaths paths;

  private Baseline(SortedMap<Entry, Integer> entries, SitePaths paths) {
    this.entries = Collections.unmodifiableSortedMap(new TreeMap<>(entries));
    this.paths = paths;
  }

  /** A baseline that knows nothing yet. */
  public static Baseline empty(SitePaths paths) {
    return new Baseline(new TreeMap<>(), paths);
  }

  /**
   * The baseline of present results, without suppressed ones and those that no baseline may hold.
   * Entries of sites that were not checked stay, and so do entries of sites that were not read in
   * full.
   *
   * @param files all that were checked, as they are called in results
   * @param all whether they are all files, so that entries of files that are gone go as well
   */
  public Baseline renewed(List<Result> results, Set<String> files, boolean all) {
    Set<String> checked = new HashSet<>();
    files.forEach(file -> checked.add(paths.kept(file)));
    TreeMap<Entry, Integer> found = new TreeMap<>();
    for (Result result : results) {
      String file = paths.kept(result.location().file());
      if (!result.suppressed()) {
        for (Identity identity : result.identities()) {
          found.merge(new Entry(file, identity, result.rule()), 1, Integer::sum);
        }
      }
      if (result.identities().isEmpty() && result.level() == Level.ERROR) {
        // Rules that rely on what is wrong there were silent.
        checked.remove(file);
      }
    }
    Set<String> replaced = new HashSet<>();
    entries.keySet().forEach(entry -> replaced.add(entry.file()));
    replaced.removeIf(file -> !checked.contains(file) && (!all || paths.exists(file)));
    TreeMap<Entry, Integer> renewed = new TreeMap<>(entries);
    renewed.keySet().removeIf(entry -> replaced.contains(entry.file()));
    found.forEach((entry, times) -> renewed.merge(entry, times, Math::max));
    return new Baseline(renewed, paths);
  }

  /**
   * Reads a baseline.
   *
   * @param shownAs how the file is called in messages
   * @throws UnusableBaseline where it does not exist, or is damaged
   */
  public static Baseline read(Path file, String shownAs, SitePaths paths) throws IOException {
    if (!Files.exists(file)) {
      throw UnusableBaseline.missing(shownAs);
    }
    return new Baseline(BaselineText.read(file, shownAs), paths);
  }

  /** Whether a baseline may replace a file: an empty one, or a baseline that may be damaged. */
  public static boolean mayReplace(Path file) throws IOException {
    try (InputStream in = RegularFile.open(file)) {
      String start = new String(in.readNBytes(4096), ISO_8859_1);
      return start.isBlank() || start.contains('"' + BaselineText.FORMAT_KEY + '"');
    }
  }

  /** Writes the baseline; the stream is left open. */
  public void write(OutputStream out) throws IOException {
    BaselineText.write(entries, out);
  }

  /** How many results it knows; {@link Integer#MAX_VALUE} for that many or more. */
  public int size() {
    long all = entries.values().stream().mapToLong(Integer::longValue).sum();
    return (int) Math.min(Integer.MAX_VALUE, all);
  }

  /**
   * Compares results with this baseline.
   *
   * @param files all that were checked, as they are called in results
   * @param unsure those of them that were not read in full, so that what is missing there may come
   *     back
   */
  public ComparedResults compare(List<Result> results, Set<String> files, Set<String> unsure) {
    return new Matching(entries, paths).compare(results, files, unsure);
  }
}
