package org.headhouse.linter.line;

import org.headhouse.linter.stability.Internal;

/**
 * A segment whose parts may differ from what is written: every terminator, every supply, every pair
 * of bias resistors and every run of cable on its own. A unit load is the most that a receiver may
 * take.
 *
 * @param circuit as written; {@code cable} stands for the resistance of its cable
 * @param cable what the conductors may have
 * @param tolerances of the parts
 */
@Internal
public record SegmentSpread(SegmentCircuit circuit, CableSpread cable, Tolerances tolerances) {

  /** A segment that is just as written. */
  public static SegmentSpread none(SegmentCircuit circuit) {
    return new SegmentSpread(
        circuit, new CableSpread(circuit.ohmsPerMetre(), circuit.ohmsPerMetre()), Tolerances.NONE);
  }

  /** The same with all that the cable may have multiplied. */
  SegmentSpread withCableTimes(double scale) {
    return new SegmentSpread(
        circuit.withOhmsPerMetre(circuit.ohmsPerMetre() * scale),
        new CableSpread(cable.leastOhmsPerMetre() * scale, cable.greatestOhmsPerMetre() * scale),
        tolerances);
  }

  double[] leastHopOhms() {
    return hopOhms(cable.leastOhmsPerMetre());
  }

  double[] greatestHopOhms() {
    return hopOhms(cable.greatestOhmsPerMetre());
  }

  private double[] hopOhms(double ohmsPerMetre) {
    double[] ohms = new double[circuit.hopLengthsMetres().size()];
    for (int hop = 0; hop < ohms.length; hop++) {
      ohms[hop] = circuit.hopLengthsMetres().get(hop) * ohmsPerMetre;
    }
    return ohms;
  }
}
