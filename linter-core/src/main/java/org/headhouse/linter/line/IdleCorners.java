package org.headhouse.linter.line;

import java.util.List;

/** An idle segment with all that its parts may have. */
final class IdleCorners {
  private IdleCorners() {}

  /** The network whose least voltages are the lowest: receivers take all that they may. */
  static CornerNetwork lowest(SegmentSpread spread) {
    SpreadParts parts = new SpreadParts(spread);
    CornerPart terminators = parts.steadyTerminators();
    return network(
        spread,
        List.of(parts.fullLoads(), terminators, parts.bias(1 - spread.tolerances().supply())),
        UnlikeResistors.idleAmperes(spread));
  }

  /** The network whose least voltages are the highest with their sign turned. */
  static CornerNetwork highestTurned(SegmentSpread spread) {
    CornerPart terminators = new SpreadParts(spread).steadyTerminators();
    return highestTurned(spread, terminators, UnlikeResistors.idleAmperes(spread));
  }

  /**
   * The same.
   *
   * @param terminators those that count
   * @param unlikeAmperes what unlike resistors may give beyond alike ones, at each item
   */
  static CornerNetwork highestTurned(
      SegmentSpread spread, CornerPart terminators, double[] unlikeAmperes) {
    SpreadParts parts = new SpreadParts(spread);
    return network(
        spread,
        List.of(parts.loads(), terminators, parts.bias(-(1 + spread.tolerances().supply()))),
        unlikeAmperes);
  }

  private static CornerNetwork network(
      SegmentSpread spread, List<CornerPart> parts, double[] takenAmperes) {
    return new CornerNetwork(
        parts, takenAmperes, spread.leastHopOhms(), spread.greatestHopOhms(), null);
  }
}
