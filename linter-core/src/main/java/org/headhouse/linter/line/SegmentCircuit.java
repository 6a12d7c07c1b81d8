package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * An electrically separate stretch of the line.
 *
 * @param items in the order of the chain, at least one
 * @param hopLengthsMetres the cable from each item to the next, one fewer than items; zero where
 *     two items share their terminals
 * @param ohmsPerMetre the resistance of one conductor; zero leaves the cable out
 */
public record SegmentCircuit(
    List<SegmentItem> items, List<Double> hopLengthsMetres, double ohmsPerMetre) {

  public SegmentCircuit {
    items = List.copyOf(items);
    hopLengthsMetres = List.copyOf(hopLengthsMetres);
    Require.notNegative(ohmsPerMetre, "resistance of the cable");
    if (hopLengthsMetres.size() != items.size() - 1) {
      throw new IllegalArgumentException(
          items.size() + " items need one hop fewer, not " + hopLengthsMetres.size());
    }
    for (double lengthMetres : hopLengthsMetres) {
      Require.notNegative(lengthMetres, "length");
    }
  }

  /** The length of the cable from the first item to the last, stubs not counted. */
  public double lengthMetres() {
    DoubleSummaryStatistics lengths = new DoubleSummaryStatistics();
    for (double lengthMetres : hopLengthsMetres) {
      lengths.accept(lengthMetres);
    }
    return lengths.getSum();
  }

  /** Out on one conductor and back on the other: {@code 2 · r · ℓ}. */
  public double loopResistanceOhms() {
    return 2 * ohmsPerMetre * lengthMetres();
  }

  /** The sum over all items. */
  public double unitLoads() {
    DoubleSummaryStatistics loads = new DoubleSummaryStatistics();
    for (SegmentItem item : items) {
      loads.accept(item.unitLoads());
    }
    return loads.getSum();
  }

  /**
   * The same with the terminators at both ends and the first bias only, weak pulls aside. What is
   * left out is a fault of its own; once it is mended, this is the segment.
   */
  public SegmentCircuit withoutExtras() {
    int last = items.size() - 1;
    int biased =
        IntStream.rangeClosed(0, last)
            .filter(item -> isHeldBy(items.get(item).bias()))
            .findFirst()
            .orElse(-1);
    return new SegmentCircuit(
        IntStream.rangeClosed(0, last)
            .mapToObj(
                item -> {
                  SegmentItem one = items.get(item);
                  boolean atEnd = item == 0 || item == last;
                  boolean only = item == biased || !isHeldBy(one.bias());
                  return one.with(atEnd ? one.terminator() : null, only ? one.bias() : null);
                })
            .toList(),
        hopLengthsMetres,
        ohmsPerMetre);
  }

  private static boolean isHeldBy(@Nullable BiasResistors bias) {
    return bias != null && !bias.isWeak();
  }

  /** Whether any item has bias resistors. */
  boolean isBiased() {
    return biases() > 0;
  }

  /** How many items have bias resistors. */
  int biases() {
    int biases = 0;
    for (SegmentItem item : items) {
      biases += item.bias() == null ? 0 : 1;
    }
    return biases;
  }

  /** The same segment, seen from its end. */
  SegmentCircuit reversed() {
    List<SegmentItem> turnedItems = new ArrayList<>(items);
    List<Double> turnedHops = new ArrayList<>(hopLengthsMetres);
    Collections.reverse(turnedItems);
    Collections.reverse(turnedHops);
    return new SegmentCircuit(turnedItems, turnedHops, ohmsPerMetre);
  }

  /** The same with every item replaced. */
  SegmentCircuit withItems(UnaryOperator<SegmentItem> replaced) {
    return new SegmentCircuit(
        items.stream().map(replaced).toList(), hopLengthsMetres, ohmsPerMetre);
  }

  SegmentCircuit withOhmsPerMetre(double other) {
    return new SegmentCircuit(items, hopLengthsMetres, other);
  }
}
