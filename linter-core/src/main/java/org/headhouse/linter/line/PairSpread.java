package org.headhouse.linter.line;

import java.util.List;

/**
 * What lies across the pair of a segment with all supplies off, as conductances of the differential
 * ladder.
 */
final class PairSpread {
  private PairSpread() {}

  /** At most: the least resistors, full loads, and the bias returned through a shorted supply. */
  static double[] most(SegmentSpread spread) {
    return sum(List.of(loadsAndBias(spread), terminators(spread).greatestSiemens()));
  }

  /** At least: the greatest terminators alone. */
  static double[] least(SegmentSpread spread) {
    return terminators(spread).leastSiemens();
  }

  /** What is left of {@link #most} with the terminators taken off. */
  static double[] loadsAndBias(SegmentSpread spread) {
    SpreadParts parts = new SpreadParts(spread);
    return sum(List.of(parts.fullLoads().greatestSiemens(), parts.bias(1).greatestSiemens()));
  }

  /** Those that pass direct current. */
  static CornerPart terminators(SegmentSpread spread) {
    return new SpreadParts(spread).steadyTerminators();
  }

  private static double[] sum(List<double[]> parts) {
    double[] sum = new double[parts.get(0).length];
    for (double[] part : parts) {
      for (int item = 0; item < sum.length; item++) {
        sum[item] += part[item];
      }
    }
    return sum;
  }
}
