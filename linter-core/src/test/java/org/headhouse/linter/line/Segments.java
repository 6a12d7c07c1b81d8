package org.headhouse.linter.line;

import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Short ways to write a segment down. */
final class Segments {
  static final double OHMS_PER_METRE = 0.1;

  private Segments() {}

  /** Items that share their terminals: no cable resistance. */
  static SegmentCircuit withoutCable(SegmentItem... items) {
    return new SegmentCircuit(
        List.of(items), Collections.nCopies(items.length - 1, 0.0), OHMS_PER_METRE);
  }

  /** Two items and a cable of so many ohms in each conductor. */
  static SegmentCircuit pair(SegmentItem one, double conductorOhms, SegmentItem other) {
    return new SegmentCircuit(
        List.of(one, other), List.of(conductorOhms / OHMS_PER_METRE), OHMS_PER_METRE);
  }

  static SegmentItem unit(double unitLoads, @Nullable Terminator terminator) {
    return new SegmentItem("unit", unitLoads, terminator, null);
  }

  static SegmentItem unit(
      double unitLoads, @Nullable Terminator terminator, @Nullable BiasResistors bias) {
    return new SegmentItem("unit", unitLoads, terminator, bias);
  }

  static Terminator ohms(double ohms) {
    return Terminator.resistor(ohms);
  }

  static BiasResistors bias(double eachOhms, double supplyVolts) {
    return new BiasResistors(eachOhms, supplyVolts);
  }
}
