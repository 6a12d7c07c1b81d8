package org.headhouse.linter.line;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The difference D1 − D0 of a segment as one ladder, without approximation.
 *
 * <p>The whole network has two nodes an item, {@code a} on D1 and {@code b} on D0, and common at 0
 * V everywhere. With {@code R} the resistance of one conductor of a hop, {@code g} the load of an
 * item from each conductor to common, {@code G} its terminator across the pair, and {@code q} and
 * {@code Vs} its bias, Kirchhoff's current law at the two nodes reads
 *
 * <pre>
 *   Σ (a − a')/R + g·a + G·(a − b) + q·(a − Vs) = 0
 *   Σ (b − b')/R + g·b + G·(b − a) + q·b        = 0
 * </pre>
 *
 * with the sums over the neighbours. Subtracted, with {@code d = a − b}:
 *
 * <pre>
 *   Σ (d − d')/R + (g + 2·G + q)·d = q·Vs
 * </pre>
 *
 * which holds no sum {@code a + b}: the differential mode is a network by itself, a {@link Ladder}
 * with {@code R} in series, {@code g + 2·G + q} as shunt and {@code q·Vs} as source. A source that
 * floats between D1 and D0 puts +i into one and −i into the other equation, so it fixes {@code d}
 * of its item and leaves {@code a + b} alone; the same i counts twice in the difference, so the
 * resistance between D1 and D0 is two over the ladder's conductance.
 */
final class DifferentialNetwork {
  private DifferentialNetwork() {}

  /** For a steady voltage: loads, bias, and terminators that pass direct current. */
  static Ladder steady(SegmentCircuit circuit) {
    return ladder(
        circuit,
        item -> item.loadSiemens() + 2 * item.steadyTerminatorSiemens() + item.biasSiemens(),
        biasAmperes(circuit));
  }

  /** For bits: loads, bias, and every terminator as its resistor. */
  static Ladder signal(SegmentCircuit circuit) {
    return ladder(
        circuit,
        item -> item.loadSiemens() + 2 * item.signalTerminatorSiemens() + item.biasSiemens(),
        biasAmperes(circuit));
  }

  /** Cable and terminators that pass direct current, and nothing else. */
  static Ladder terminatorsOnly(SegmentCircuit circuit) {
    return ladder(
        circuit, item -> 2 * item.steadyTerminatorSiemens(), new double[circuit.items().size()]);
  }

  static double[] biasAmperes(SegmentCircuit circuit) {
    return ofItems(circuit, SegmentItem::biasAmperes);
  }

  static Ladder ladder(
      SegmentCircuit circuit, ToDoubleFunction<SegmentItem> shuntSiemens, double[] sourceAmperes) {
    List<Double> hops = circuit.hopLengthsMetres();
    double[] seriesOhms = new double[hops.size()];
    for (int hop = 0; hop < seriesOhms.length; hop++) {
      seriesOhms[hop] = circuit.ohmsPerMetre() * hops.get(hop);
    }
    return new Ladder(ofItems(circuit, shuntSiemens), sourceAmperes, seriesOhms);
  }

  private static double[] ofItems(SegmentCircuit circuit, ToDoubleFunction<SegmentItem> value) {
    double[] values = new double[circuit.items().size()];
    for (int item = 0; item < values.length; item++) {
      values[item] = value.applyAsDouble(circuit.items().get(item));
    }
    return values;
  }
}
