package org.headhouse.linter.spark;

import java.io.IOException;
import java.io.OutputStream;
import java.io.Serializable;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.spark.SparkConf;
import org.apache.spark.api.java.JavaSparkContext;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.ReportPart;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.headhouse.linter.report.SarifReport;

/**
 * Checks sites in partitions of Apache Spark, joins the parts, and compares the results byte for
 * byte with those of one check in this process. Ends with an exception where they differ.
 */
public final class PartsOnSpark {
  private PartsOnSpark() {}

  /** Takes the folder of the sample sites, the number of sites, and that of the partitions. */
  public static void main(String[] arguments) throws IOException {
    Path folder = Path.of(arguments[0]);
    int number = Integer.parseInt(arguments[1]);
    int partitions = Integer.parseInt(arguments[2]);
    Repository repository = Repository.like(folder, number);

    long start = System.nanoTime();
    CheckReport whole =
        repository.linter().check(IntStream.range(0, number).mapToObj(repository::site));
    double wholeSeconds = secondsSince(start);

    start = System.nanoTime();
    CheckReport joined = repository.linter().join(parts(repository, number, partitions), number);
    double joinedSeconds = secondsSince(start);

    Path one = log(whole);
    Path other = log(joined);
    if (Files.mismatch(one, other) != -1 || !joined.equals(whole)) {
      throw new IllegalStateException("the results differ: " + one + ", " + other);
    }
    System.out.printf(
        Locale.ROOT,
        "%d sites, %d results, %d bytes of SARIF: the same from %d partitions (%.1f s) as from one"
            + " check (%.1f s)%n",
        joined.files(),
        joined.results().size(),
        Files.size(one),
        partitions,
        joinedSeconds,
        wholeSeconds);
    Files.delete(one);
    Files.delete(other);
  }

  private static List<ReportPart> parts(Repository repository, int number, int partitions) {
    SparkConf conf =
        new SparkConf()
            .setAppName("sites")
            .setMaster("local[2]")
            .set("spark.ui.enabled", "false")
            .set("spark.driver.host", "localhost")
            .set("spark.driver.bindAddress", "127.0.0.1");
    try (JavaSparkContext spark = new JavaSparkContext(conf)) {
      List<Integer> numbers = IntStream.range(0, number).boxed().toList();
      return spark
          .parallelize(numbers, partitions)
          .mapPartitions(own -> List.of(part(repository, own)).iterator())
          .collect();
    }
  }

  private static ReportPart part(Repository repository, Iterator<Integer> numbers) {
    Iterable<Integer> own = () -> numbers;
    return repository
        .linter()
        .checkPart(StreamSupport.stream(own.spliterator(), false).map(repository::site));
  }

  private static double secondsSince(long start) {
    return (System.nanoTime() - start) / (double) TimeUnit.SECONDS.toNanos(1);
  }

  private static Path log(CheckReport report) throws IOException {
    Path file = Files.createTempFile("results", ".sarif");
    try (OutputStream out = Files.newOutputStream(file)) {
      new SarifReport(report.rules()).write(report.results(), report.notifications(), out);
    }
    return file;
  }

  /**
   * Sites like the samples: every fifth has a line less, and some ids are there twice, as a rule in
   * different partitions.
   */
  private record Repository(List<String> samples, String types, int number)
      implements Serializable {
    private static final int EVERY_FIFTH = 5;

    static Repository like(Path folder, int number) throws IOException {
      List<String> samples = new ArrayList<>();
      try (Stream<Path> files = Files.list(folder.resolve("sites"))) {
        for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
          String text = Files.readString(file);
          // The same zones in every site would be thousands of results.
          if (!text.contains("\nsupervision:")) {
            samples.add(text);
          }
        }
      }
      return new Repository(
          List.copyOf(samples), Files.readString(folder.resolve("device-types.yaml")), number);
    }

    SiteLinter linter() {
      try {
        return SiteLinter.builder()
            .deviceTypes(SiteInput.text("device-types.yaml", types))
            .threads(1)
            .build();
      } catch (IOException impossible) {
        throw new UncheckedIOException(impossible);
      }
    }

    SiteInput site(int index) {
      String id = "site-" + index % (number - number / 100);
      String sample = samples.get(index % samples.size());
      List<String> lines = new ArrayList<>(sample.lines().toList());
      lines.replaceAll(line -> line.startsWith("site: ") ? "site: " + id : line);
      if (index % EVERY_FIFTH == 0) {
        lines.remove(10 + index / EVERY_FIFTH % (lines.size() - 10));
      }
      return SiteInput.text("sites/" + id + "-" + index + ".yaml", String.join("\n", lines) + "\n");
    }
  }
}
