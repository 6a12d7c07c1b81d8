package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.WorstCorner;
import org.jspecify.annotations.Nullable;

/**
 * The weakest voltages of a segment, each at the combination of what its parts may have that is the
 * worst for it.
 *
 * @param idleVolts D1 − D0 at every item, or null without bias
 * @param weakestReceived over all pairs of items, or null with less than two
 */
public record WorstFigures(
    @Nullable List<Double> idleVolts, @Nullable ReceivedVoltage weakestReceived) {

  public WorstFigures {
    idleVolts = idleVolts == null ? null : List.copyOf(idleVolts);
  }

  static WorstFigures of(SegmentNetwork network) {
    return new WorstFigures(
        WorstCorner.idleVolts(network.spread()), network.weakestReceivedAtWorst());
  }
}
