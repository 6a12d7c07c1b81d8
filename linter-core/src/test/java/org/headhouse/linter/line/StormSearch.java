package org.headhouse.linter.line;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.headhouse.linter.line.StormLine.Poller;
import org.headhouse.linter.line.StormLine.Trouble;

/**
 * A line of which many runs are tried, in search of the worst.
 *
 * @param silent whose unit does not answer; when its turns come is varied
 * @param others all other pollers
 */
record StormSearch(
    int baud,
    int registers,
    double period,
    double averaging,
    double staleAfter,
    double close,
    int lost,
    Poller silent,
    List<Poller> others) {

  private static final double INSTANT = 1e-6;

  /** The worst of many runs of one line. */
  static final class Worst {
    double age;
    double closed;
    double closedOnLivingLine;
  }

  StormSearch withStaleAfter(double other) {
    return new StormSearch(baud, registers, period, averaging, other, close, lost, silent, others);
  }

  private StormLine line() {
    return new StormLine(baud, registers, 0.1, period, averaging, staleAfter, close);
  }

  private List<Poller> pollersWith(double phase) {
    List<Poller> pollers = new ArrayList<>();
    pollers.add(
        new Poller(
            silent.units(),
            silent.registers(),
            silent.periodSeconds(),
            phase,
            silent.processingSeconds(),
            silent.timeoutSeconds(),
            silent.retries(),
            silent.silentUnit()));
    pollers.addAll(others);
    return pollers;
  }

  /**
   * Gusts whose mean passes the limit just after a broadcast was due, or at any time; the next ones
   * lost; the line dead from right after a broadcast on, or from any time, or never; polls in any
   * phase, or such that one begins just before a broadcast is due.
   */
  Worst worst(Random random, int runs) {
    Worst worst = new Worst();
    for (int run = 0; run < runs; run++) {
      int last = 12 + random.nextInt(6);
      double lastDue = last * period;
      double passes =
          random.nextInt(4) > 0 ? lastDue + INSTANT : lastDue + random.nextDouble() * period;
      boolean dies = random.nextBoolean();
      int late = dies ? last : last + lost + 1;
      double phase = phase(late * period, random);
      Set<Integer> gone = dies ? Set.of() : next(last + 1, random.nextInt(3) > 0 ? lost : 0);
      double deadFrom = dies ? deadFrom(phase, last, random) : Double.POSITIVE_INFINITY;
      StormLine line = line();
      double until = passes + (lost + 4) * period + staleAfter + 20;
      line.run(pollersWith(phase), new Trouble(passes - averaging, gone, deadFrom), until);
      worst.age = Math.max(worst.age, line.oldestReadingSeconds());
      double took = line.closedAt() - (passes - averaging);
      assertThat(took).as("closes at all: %s", this).isNotNaN();
      worst.closed = Math.max(worst.closed, took);
      if (!dies) {
        worst.closedOnLivingLine = Math.max(worst.closedOnLivingLine, took);
      }
    }
    return worst;
  }

  private static Set<Integer> next(int first, int count) {
    return IntStream.range(first, first + count).boxed().collect(Collectors.toSet());
  }

  /** Right after the broadcast was heard, or any time about it. */
  private double deadFrom(double phase, int last, Random random) {
    if (random.nextInt(4) == 0) {
      return (last - 1 + 3 * random.nextDouble()) * period;
    }
    StormLine line = line();
    line.run(
        pollersWith(phase),
        new Trouble(Double.POSITIVE_INFINITY, Set.of(), Double.POSITIVE_INFINITY),
        (last + 3) * period);
    return line.heardAt(last) + INSTANT;
  }

  /** Of a round of polls, so that the silent unit's turn begins about when a broadcast is due. */
  private double phase(double due, Random random) {
    double every = silent.periodSeconds();
    if (random.nextInt(4) == 0) {
      return random.nextDouble() * every;
    }
    double each = (13 + 2 * silent.registers() + 7) * 11.0 / baud + silent.processingSeconds();
    double before = silent.silentUnit() * each + 0.3 * random.nextDouble();
    double phase = (due - before) % every;
    return phase < 0 ? phase + every : phase;
  }
}
