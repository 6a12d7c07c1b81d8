package org.headhouse.linter.line;

import java.util.List;
import java.util.function.ToDoubleFunction;

/** The parts of a segment as a {@link CornerNetwork} of its differential ladder takes them. */
final class SpreadParts {
  private final SegmentSpread spread;

  SpreadParts(SegmentSpread spread) {
    this.spread = spread;
  }

  /** Receivers that take as much as they may. */
  CornerPart fullLoads() {
    return part(SegmentItem::loadSiemens, SegmentItem::loadSiemens, SpreadParts::none);
  }

  /** Receivers that take anything from nothing to as much as they may. */
  CornerPart loads() {
    return part(SpreadParts::none, SegmentItem::loadSiemens, SpreadParts::none);
  }

  /** Terminators that pass direct current. */
  CornerPart steadyTerminators() {
    return terminators(SegmentItem::steadyTerminatorSiemens);
  }

  /** All terminators as their resistors. */
  CornerPart signalTerminators() {
    return terminators(SegmentItem::signalTerminatorSiemens);
  }

  private CornerPart terminators(ToDoubleFunction<SegmentItem> siemens) {
    double tolerance = spread.tolerances().terminators();
    return part(
        item -> 2 * siemens.applyAsDouble(item) / (1 + tolerance),
        item -> 2 * siemens.applyAsDouble(item) / (1 - tolerance),
        SpreadParts::none);
  }

  /**
   * Bias resistors and their supply.
   *
   * @param supplyScale what the supply is multiplied by
   */
  CornerPart bias(double supplyScale) {
    return part(
        item -> biasSiemens(item, 1),
        item -> biasSiemens(item, -1),
        item -> item.bias() == null ? 0 : supplyScale * item.bias().supplyVolts());
  }

  private double biasSiemens(SegmentItem item, int sign) {
    BiasResistors bias = item.bias();
    return bias == null ? 0 : bias.siemens() / (1 + sign * spread.tolerances().of(bias));
  }

  private static double none(SegmentItem item) {
    return 0;
  }

  private CornerPart part(
      ToDoubleFunction<SegmentItem> least,
      ToDoubleFunction<SegmentItem> greatest,
      ToDoubleFunction<SegmentItem> volts) {
    return new CornerPart(values(least), values(greatest), values(volts));
  }

  private double[] values(ToDoubleFunction<SegmentItem> value) {
    List<SegmentItem> items = spread.circuit().items();
    return items.stream().mapToDouble(value).toArray();
  }
}
