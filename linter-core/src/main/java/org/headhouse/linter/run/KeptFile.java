package org.headhouse.linter.run;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import org.headhouse.linter.cache.KeptOutcomes;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.Trouble;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.source.RegularFile;

/** The file in the output directory that keeps the outcomes of a run for the next one. */
public final class KeptFile {
  private static final String NAME = "checked-sites.cache";

  /** What a run without it has to do is less trouble than a heap that is full. */
  private static final int SHARE_OF_THE_HEAP = 8;

  private final Path file;
  private final KeptOutcomes outcomes;

  private KeptFile(Path file, KeptOutcomes outcomes) {
    this.file = file;
    this.outcomes = outcomes;
  }

  /** What the last run left in a folder, which may be nothing. */
  public static KeptFile in(Path folder) {
    Path file = folder.resolve(NAME);
    return new KeptFile(file, read(file));
  }

  /** The file of a folder, without what the last run left there. */
  public static KeptFile anew(Path folder) {
    return new KeptFile(folder.resolve(NAME), KeptOutcomes.none());
  }

  private static KeptOutcomes read(Path file) {
    try (InputStream in = RegularFile.open(file)) {
      int most = mostBytes();
      return Files.size(file) > most ? KeptOutcomes.none() : KeptOutcomes.of(in.readNBytes(most));
    } catch (IOException nothingThere) {
      return KeptOutcomes.none();
    }
  }

  private static int mostBytes() {
    return (int)
        Math.min(Runtime.getRuntime().maxMemory() / SHARE_OF_THE_HEAP, Integer.MAX_VALUE / 2);
  }

  /** What a linter uses, and adds to. */
  public KeptOutcomes outcomes() {
    return outcomes;
  }

  /** Writes what the run found, unless it is there already; a failure costs the next run time. */
  public void save(Console console) {
    if (!outcomes.isChanged()) {
      return;
    }
    if (outcomes.size() > mostBytes()) {
      console.tell(
          Level.NOTE, "Too much to keep in this heap: the next run checks all sites again.");
      return;
    }
    try {
      AtomicFile.write(file, outcomes::write);
    } catch (Trouble trouble) {
      console.tell(Level.WARNING, trouble.getMessage() + "; the next run checks all sites again");
    }
  }
}
