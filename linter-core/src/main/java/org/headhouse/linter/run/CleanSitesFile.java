package org.headhouse.linter.run;

import java.io.IOException;
import java.io.InputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.zip.CRC32;
import org.headhouse.linter.check.CleanFiles;
import org.headhouse.linter.files.AtomicFile;
import org.headhouse.linter.files.UserError;
import org.headhouse.linter.source.RegularFile;
import org.jspecify.annotations.Nullable;

/** The file in the output directory from which a user's next run knows which sites were clean. */
public final class CleanSitesFile {
  private final Path file;
  private final byte[] key;
  private final String version;
  private final byte[] found;
  private @Nullable CleanFiles clean;

  CleanSitesFile(Path folder, byte[] key, String version) {
    this.file = folder.resolve("clean-sites.cache");
    this.key = key;
    this.version = version;
    this.found = read(file);
  }

  /** The file of a folder; null where this user has no key, or the linter is not in one jar. */
  public static @Nullable CleanSitesFile in(Path folder) {
    try {
      var linter = CleanSitesFile.class.getProtectionDomain().getCodeSource();
      CRC32 version = new CRC32();
      version.update(Files.readAllBytes(Path.of(linter.getLocation().toURI())));
      Path cache = UserKey.cacheFolder(System.getenv(), Path.of(System.getProperty("user.home")));
      byte[] key = UserKey.read(cache, System.getProperty("user.name"));
      return new CleanSitesFile(folder, key, version.getValue() + "\n");
    } catch (IOException | URISyntaxException | RuntimeException nothingIsKept) {
      return null;
    }
  }

  private static byte[] read(Path file) {
    // To check all sites costs less than to fill the heap.
    int most = (int) Math.min(Runtime.getRuntime().maxMemory() / 16, 1 << 30);
    try (InputStream in = RegularFile.open(file)) {
      return Files.size(file) > most ? new byte[0] : in.readNBytes(most);
    } catch (IOException nothingThere) {
      return new byte[0];
    }
  }

  /** What a check uses and adds to. */
  public CleanFiles open(String validity) {
    clean = new CleanFiles(key, version + validity, found);
    return clean;
  }

  /** Writes what the check found clean, unless it is there already; else the next takes longer. */
  public void save() {
    byte[] sealed = clean == null ? found : clean.sealed();
    try {
      if (!Arrays.equals(sealed, found)) {
        AtomicFile.write(file, out -> out.write(sealed));
      }
    } catch (UserError nothingIsKept) {
      // The results are there, and the next run checks all sites.
    }
  }
}
