package org.headhouse.linter.bench;

import java.util.Collection;
import java.util.Locale;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/** Runs the benchmarks and prints what they say of each other; times alone say little. */
public final class Ratios {
  private Ratios() {}

  @SuppressWarnings("SystemOut")
  public static void main(String[] arguments) throws RunnerException {
    Collection<RunResult> results =
        new Runner(
                new OptionsBuilder()
                    .include(CheckBenchmark.class.getSimpleName() + "\\.")
                    .include(LineBenchmark.class.getSimpleName() + "\\.")
                    .build())
            .run();
    double floor = score(results, "events");
    double one = score(results, "oneThread");
    double two = score(results, "twoThreads");
    System.out.printf(
        Locale.ROOT,
        "%d files of %d units: events %.0f ms, check %.0f ms, by two threads %.0f ms%n"
            + "check / events: %.2f%none thread / two threads: %.2f%n"
            + "figures / reading, 247 units: %.3f%n",
        CheckBenchmark.FILES,
        CheckBenchmark.UNITS,
        floor,
        one,
        two,
        one / floor,
        one / two,
        score(results, "figures") / score(results, "read"));
  }

  private static double score(Collection<RunResult> results, String name) {
    return results.stream()
        .filter(result -> result.getPrimaryResult().getLabel().equals(name))
        .findFirst()
        .orElseThrow()
        .getPrimaryResult()
        .getScore();
  }
}
