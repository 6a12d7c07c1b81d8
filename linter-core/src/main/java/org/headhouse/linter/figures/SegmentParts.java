package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.CableSpread;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentItem;
import org.headhouse.linter.line.SegmentSpread;
import org.headhouse.linter.line.Tolerances;
import org.headhouse.linter.line.Wire;
import org.jspecify.annotations.Nullable;

/**
 * The parts of a segment, before anybody says how warm its cable is.
 *
 * @param wire one conductor of the cable
 * @param celsius the highest temperature of the conductors as written, or null
 */
record SegmentParts(
    List<SegmentItem> items, List<Double> hopMetres, Wire wire, @Nullable Double celsius) {

  SegmentParts {
    items = List.copyOf(items);
    hopMetres = List.copyOf(hopMetres);
  }

  /** Everything as it is written, the cable at one temperature. */
  SegmentCircuit at(double cableCelsius) {
    return new SegmentCircuit(items, hopMetres, wire.resistanceOhmsPerMetre(cableCelsius));
  }

  /** What the parts may have, for the weakest voltages. */
  SegmentSpread spread(SegmentCircuit circuit, Tolerances tolerances) {
    return new SegmentSpread(circuit, CableSpread.atWeakest(wire, celsius, tolerances), tolerances);
  }

  /** What the parts may have when they are measured, in winter or in summer. */
  SegmentSpread ofReadings(SegmentCircuit circuit, Tolerances tolerances) {
    return new SegmentSpread(
        circuit, CableSpread.ofReadings(wire, celsius, tolerances), tolerances);
  }
}
