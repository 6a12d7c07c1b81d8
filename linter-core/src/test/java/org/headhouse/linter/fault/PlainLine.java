package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.headhouse.linter.line.BiasResistors;
import org.headhouse.linter.line.CableSpread;
import org.headhouse.linter.line.MeterAccuracy;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.SegmentSpread;
import org.headhouse.linter.line.Terminator;
import org.headhouse.linter.line.Tolerances;

/** A line as most are: terminators at both ends, bias at the first item, light receivers. */
final class PlainLine {
  private static final double OHMS_PER_METRE = 0.0842;

  private PlainLine() {}

  static SegmentFaults faults(int items, long seed) {
    Random random = new Random(seed);
    List<SegmentItem> all = new ArrayList<>();
    List<Double> hops = new ArrayList<>();
    for (int item = 0; item < items; item++) {
      boolean end = item == 0 || item == items - 1;
      all.add(
          new SegmentItem(
              "i" + item,
              0.125,
              end ? Terminator.resistor(120) : null,
              item == 0 ? new BiasResistors(560, 5) : null));
      if (item > 0) {
        hops.add(10 + 60 * random.nextDouble());
      }
    }
    return new SegmentFaults(
        new SegmentSpread(
            new SegmentCircuit(all, hops, OHMS_PER_METRE),
            new CableSpread(0.86 * OHMS_PER_METRE, 1.15 * OHMS_PER_METRE),
            Tolerances.USUAL),
        120,
        new Meters(MeterAccuracy.HAND_METER_OHMS, MeterAccuracy.HAND_METER_VOLTS));
  }
}
