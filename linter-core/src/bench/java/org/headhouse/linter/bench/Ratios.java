package org.headhouse.linter.bench;

import java.util.Collection;
import java.util.Locale;
import java.util.Objects;
import org.openjdk.jmh.profile.GCProfiler;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Runs the benchmarks and prints what they say of each other; times alone say little. Of the times
 * of each, the least counts, since what else runs on a machine adds to them; of the memory, the
 * mean.
 */
public final class Ratios {
  private final Collection<RunResult> results;

  private Ratios(Collection<RunResult> results) {
    this.results = results;
  }

  public static void main(String[] arguments) throws RunnerException {
    new Ratios(
            new Runner(
                    new OptionsBuilder()
                        .include(CheckBenchmark.class.getSimpleName() + "\\.")
                        .include(LineBenchmark.class.getSimpleName() + "\\.")
                        .addProfiler(GCProfiler.class)
                        .build())
                .run())
        .print();
  }

  @SuppressWarnings("SystemOut")
  private void print() {
    for (String units : new String[] {"20", "247"}) {
      System.out.print(ofSites(units));
    }
    System.out.printf(
        Locale.ROOT,
        "a unit among 247 / a unit among 20: %.2f%nfigures / reading, 247 units: %.3f%n",
        perUnit("247") / perUnit("20"),
        score("figures", "") / score("read", ""));
  }

  private String ofSites(String units) {
    int files = CheckBenchmark.files(Integer.parseInt(units));
    double bytes = score("bytes", units);
    double events = score("events", units);
    double one = score("oneThread", units);
    double two = score("twoThreads", units);
    double eventsByTwo = score("eventsByTwo", units);
    return String.format(
        Locale.ROOT,
        "%d files of %s units: bytes %.0f ms, events %.0f ms, check %.0f ms, by two threads %.0f"
            + " ms%n  check / events: %.2f, events / bytes: %.0f, one thread / two threads: %.2f, of"
            + " events %.2f%n"
            + "  allocated for a file: events %.0f KB, check %.0f KB%n",
        files,
        units,
        bytes,
        events,
        one,
        two,
        one / events,
        events / bytes,
        one / two,
        events / eventsByTwo,
        allocated("events", units) / files / 1024,
        allocated("oneThread", units) / files / 1024);
  }

  private double perUnit(String units) {
    int number = Integer.parseInt(units);
    return score("oneThread", units) / CheckBenchmark.files(number) / number;
  }

  private double score(String name, String units) {
    return result(name, units).getPrimaryResult().getStatistics().getMin();
  }

  private double allocated(String name, String units) {
    RunResult result = result(name, units);
    String label =
        result.getSecondaryResults().keySet().stream()
            .filter(key -> key.endsWith("gc.alloc.rate.norm"))
            .findFirst()
            .orElseThrow();
    return Objects.requireNonNull(result.getSecondaryResults().get(label)).getScore();
  }

  private RunResult result(String name, String units) {
    return results.stream()
        .filter(result -> result.getPrimaryResult().getLabel().equals(name))
        .filter(result -> units.isEmpty() || units.equals(result.getParams().getParam("units")))
        .findFirst()
        .orElseThrow();
  }
}
