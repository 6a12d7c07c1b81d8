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
                new OptionsBuilder().include(CheckBenchmark.class.getSimpleName() + "\\.").build())
            .run();
    double floor = millis(results, "events");
    double one = millis(results, "oneThread");
    double two = millis(results, "twoThreads");
    System.out.printf(
        Locale.ROOT,
        "%d files of %d units: events %.0f ms, check %.0f ms, by two threads %.0f ms%n"
            + "check / events: %.2f%none thread / two threads: %.2f%n",
        CheckBenchmark.FILES,
        CheckBenchmark.UNITS,
        floor,
        one,
        two,
        one / floor,
        one / two);
  }

  private static double millis(Collection<RunResult> results, String name) {
    return results.stream()
        .filter(result -> result.getPrimaryResult().getLabel().equals(name))
        .findFirst()
        .orElseThrow()
        .getPrimaryResult()
        .getScore();
  }
}
