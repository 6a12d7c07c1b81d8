package org.headhouse.linter.line;

import java.util.List;

/** What the first item and the last send, with all that the parts of a segment may have. */
final class ReceivedCorners {
  private final int last;
  private final CornerNetwork onward;
  private final CornerNetwork back;

  ReceivedCorners(SegmentSpread spread) {
    last = spread.circuit().items().size() - 1;
    onward = network(spread);
    back = network(reversed(spread));
  }

  /** In D0 − D1 the driver is positive, and the bias negative. */
  private static CornerNetwork network(SegmentSpread spread) {
    SpreadParts parts = new SpreadParts(spread);
    return new CornerNetwork(
        List.of(
            parts.fullLoads(),
            parts.signalTerminators(),
            parts.bias(-(1 + spread.tolerances().supply()))),
        UnlikeResistors.drivenAmperes(spread),
        spread.leastHopOhms(),
        spread.greatestHopOhms(),
        Levels.DRIVER_VOLTS);
  }

  private static SegmentSpread reversed(SegmentSpread spread) {
    return new SegmentSpread(spread.circuit().reversed(), spread.cable(), spread.tolerances());
  }

  /** The least that an item receives from the first. */
  ReceivedVoltage fromFirst(int to) {
    return new ReceivedVoltage(0, to, onward.leastVolts(to));
  }

  /** The least that an item receives from the last. */
  ReceivedVoltage fromLast(int to) {
    return new ReceivedVoltage(last, to, back.leastVolts(last - to));
  }
}
