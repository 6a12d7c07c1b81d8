package org.headhouse.linter.bench;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.headhouse.linter.CheckReport;
import org.headhouse.linter.SiteInput;
import org.headhouse.linter.SiteLinter;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

/** One operation is all the files, held in memory. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(2)
public class CheckBenchmark {
  /** As many files as hold about a hundred thousand units. */
  static final int ALL_UNITS = 100_000;

  /** Units of one site. */
  @Param({"20", "247"})
  public int units;

  private final List<SiteInput> inputs = new ArrayList<>();
  private List<byte[]> files = List.of();
  private @Nullable SiteLinter oneThread;
  private @Nullable SiteLinter twoThreads;
  private final ExecutorService second = Executors.newSingleThreadExecutor();

  /** Makes the files, and proves that they are without a fault. */
  @Setup
  public void makeFiles() throws IOException {
    files = Corpus.sites(files(units), units);
    for (int i = 0; i < files.size(); i++) {
      byte[] bytes = files.get(i);
      inputs.add(new SiteInput("site-" + i + ".yaml", most -> bytes));
    }
    oneThread = linter(1);
    twoThreads = linter(2);
    CheckReport report = check(oneThread);
    if (!report.results().isEmpty() || report.units() != files.size() * units) {
      throw new IllegalStateException("the files are not as expected: " + report.results().get(0));
    }
  }

  @TearDown
  public void end() {
    second.shutdown();
  }

  static int files(int units) {
    return ALL_UNITS / units;
  }

  private static SiteLinter linter(int threads) throws IOException {
    return SiteLinter.builder()
        .threads(threads)
        .deviceTypes(SiteInput.text("device-types.yaml", Corpus.DEVICE_TYPES))
        .build();
  }

  /** What no reader can do without: the bytes looked at, one by one. */
  @Benchmark
  public int bytes() {
    int lines = 0;
    for (byte[] file : files) {
      for (byte one : file) {
        if (one == '\n') {
          lines++;
        }
      }
    }
    return lines;
  }

  /** The floor: the bytes decoded and parsed into events, and nothing made of them. */
  @Benchmark
  public int events() {
    return events(files);
  }

  /** The floor by two threads that share nothing: what the machine gives a second one. */
  @Benchmark
  public int eventsByTwo() throws ExecutionException, InterruptedException {
    int half = files.size() / 2;
    Future<Integer> other = second.submit(() -> events(files.subList(0, half)));
    return events(files.subList(half, files.size())) + other.get();
  }

  private static int events(List<byte[]> files) {
    int events = 0;
    for (byte[] file : files) {
      events += BareEvents.events(file);
    }
    return events;
  }

  /** The whole check by one thread. */
  @Benchmark
  public CheckReport oneThread() {
    return check(oneThread);
  }

  /** The whole check by two threads. */
  @Benchmark
  public CheckReport twoThreads() {
    return check(twoThreads);
  }

  private CheckReport check(@Nullable SiteLinter linter) {
    if (linter == null) {
      throw new IllegalStateException("the files were not made");
    }
    return linter.check(inputs.stream());
  }
}
