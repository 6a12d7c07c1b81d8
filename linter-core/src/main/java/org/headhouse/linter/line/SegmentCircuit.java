package org.headhouse.linter.line;

import java.util.DoubleSummaryStatistics;
import java.util.List;

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

  /** Whether any item has bias resistors. */
  boolean isBiased() {
    for (SegmentItem item : items) {
      if (item.bias() != null) {
        return true;
      }
    }
    return false;
  }

  SegmentCircuit withOhmsPerMetre(double other) {
    return new SegmentCircuit(items, hopLengthsMetres, other);
  }
}
