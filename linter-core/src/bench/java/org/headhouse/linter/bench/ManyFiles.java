package org.headhouse.linter.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;

/**
 * Checks many files of a disk: ten thousand, and ten times as many. Prints how the times compare,
 * and stands or falls with the heap that it is given.
 */
public final class ManyFiles {
  private static final int FEW = 10_000;
  private static final int MANY = 100_000;
  private static final int BATCH = 1000;
  private static final int ROUNDS = 3;

  private final Path folder;

  private ManyFiles(Path folder) {
    this.folder = folder;
  }

  public static void main(String[] arguments) throws IOException {
    ManyFiles files = new ManyFiles(Files.createTempDirectory("many-sites"));
    try {
      files.write();
      files.compare();
    } finally {
      files.delete();
    }
  }

  private Path file(int number) {
    return folder.resolve(String.valueOf(number / BATCH)).resolve("site-" + number + ".yaml");
  }

  private void write() throws IOException {
    for (int first = 0; first < MANY; first += BATCH) {
      Files.createDirectory(file(first).getParent());
      int number = first;
      for (byte[] site : Corpus.sites(first, BATCH, 20)) {
        Files.write(file(number++), site);
      }
    }
  }

  @SuppressWarnings("SystemOut")
  private void compare() throws IOException {
    seconds(FEW); // warms up
    double few = Double.POSITIVE_INFINITY;
    double many = Double.POSITIVE_INFINITY;
    for (int round = 0; round < ROUNDS; round++) {
      few = Math.min(few, seconds(FEW));
      many = Math.min(many, seconds(MANY));
    }
    System.out.printf(
        Locale.ROOT,
        "%d files %.2f s, %d files %.2f s, in a heap of %d MB: %.2f times as long; %.0f files a"
            + " second%n",
        FEW,
        few,
        MANY,
        many,
        Runtime.getRuntime().maxMemory() >> 20,
        many / few,
        MANY / many);
  }

  private double seconds(int number) throws IOException {
    SiteLinter linter =
        SiteLinter.builder()
            .threads(Runtime.getRuntime().availableProcessors())
            .deviceTypes(SiteInput.text("device-types.yaml", Corpus.DEVICE_TYPES))
            .build();
    long start = System.nanoTime();
    CheckReport report =
        linter.check(IntStream.range(0, number).mapToObj(i -> SiteInput.file(file(i))));
    double seconds = (System.nanoTime() - start) / 1e9;
    if (report.files() != number || !report.results().isEmpty()) {
      throw new IllegalStateException("the files are not as expected: " + report.results().get(0));
    }
    return seconds;
  }

  private void delete() throws IOException {
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : (Iterable<Path>) files.sorted(Comparator.reverseOrder())::iterator) {
        Files.delete(file);
      }
    }
  }
}
