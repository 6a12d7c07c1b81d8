package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The figures of a segment.
 *
 * @param items the names in the order of the chain
 * @param lengthMetres the cable, stubs not counted
 * @param loopResistanceOhms out and back
 * @param unitLoads the sum over all items
 * @param idleVolts D1 − D0 at every item, or null without bias
 * @param lowestIdle over all items, or null without bias
 * @param weakestReceived over all pairs of items, or null with less than two
 * @param pairResistance at the item where it is measured
 */
public record SegmentFigures(
    List<String> items,
    double lengthMetres,
    double loopResistanceOhms,
    double unitLoads,
    @Nullable List<Double> idleVolts,
    @Nullable IdleVoltage lowestIdle,
    @Nullable ReceivedVoltage weakestReceived,
    PairResistance pairResistance) {

  @Internal
  public SegmentFigures {
    items = List.copyOf(items);
    idleVolts = idleVolts == null ? null : List.copyOf(idleVolts);
  }

  /**
   * Computes all figures of a segment, O(n).
   *
   * @param measuredAt the index of the item where the pair resistance is measured
   */
  public static SegmentFigures of(SegmentCircuit circuit, int measuredAt) {
    List<Double> idleVolts = IdleVoltage.ofAllItems(circuit);
    return new SegmentFigures(
        names(circuit),
        circuit.lengthMetres(),
        circuit.loopResistanceOhms(),
        circuit.unitLoads(),
        idleVolts,
        idleVolts == null ? null : IdleVoltage.lowest(idleVolts),
        ReceivedVoltage.weakestOfItems(circuit),
        PairResistance.at(circuit, measuredAt));
  }

  private static List<String> names(SegmentCircuit circuit) {
    List<String> names = new ArrayList<>(circuit.items().size());
    for (SegmentItem item : circuit.items()) {
      names.add(item.name());
    }
    return names;
  }
}
