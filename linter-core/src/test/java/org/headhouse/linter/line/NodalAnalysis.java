package org.headhouse.linter.line;

import java.util.Arrays;
import java.util.List;
import org.ejml.data.DMatrixRMaj;
import org.ejml.dense.row.CommonOps_DDRM;
import org.jspecify.annotations.Nullable;

/**
 * The textbook way: the full matrix of conductances of both conductors of a segment, inverted by a
 * general-purpose library. It knows nothing of modes or ladders. Items without cable between them
 * share their nodes.
 */
final class NodalAnalysis {
  private static final int COMMON = -1;

  private final int[] nodeOfItem;
  private final DMatrixRMaj ohms;
  private final DMatrixRMaj amperes;

  /** The network with loads and bias; a terminator with a capacitor is open or not. */
  static NodalAnalysis loaded(SegmentCircuit circuit, boolean capacitorsConduct) {
    double[] alike = new double[circuit.items().size()];
    Arrays.fill(alike, 1);
    return loaded(circuit, capacitorsConduct, alike);
  }

  /**
   * The same where the two resistors of a bias are not alike.
   *
   * @param pullDownShare what the one at D0 has of the one at D1, at every item
   */
  static NodalAnalysis loaded(
      SegmentCircuit circuit, boolean capacitorsConduct, double[] pullDownShare) {
    int[] nodes = nodes(circuit);
    int size = 2 * (nodes[nodes.length - 1] + 1);
    DMatrixRMaj siemens = new DMatrixRMaj(size, size);
    DMatrixRMaj amperes = new DMatrixRMaj(size, 1);
    stampCable(siemens, circuit, nodes);
    stampTerminators(siemens, circuit, nodes, capacitorsConduct);
    for (int item = 0; item < nodes.length; item++) {
      SegmentItem there = circuit.items().get(item);
      int d1 = 2 * nodes[item];
      int d0 = d1 + 1;
      stamp(siemens, d1, COMMON, there.unitLoads() / 12_000);
      stamp(siemens, d0, COMMON, there.unitLoads() / 12_000);
      BiasResistors bias = there.bias();
      if (bias != null) {
        stamp(siemens, d1, COMMON, 1 / bias.eachOhms());
        stamp(siemens, d0, COMMON, 1 / (bias.eachOhms() * pullDownShare[item]));
        amperes.add(d1, 0, bias.supplyVolts() / bias.eachOhms());
      }
    }
    return new NodalAnalysis(nodes, siemens, amperes);
  }

  /** Cable and terminators only, D0 of the first item taken for the reference. */
  static NodalAnalysis terminatorsOnly(SegmentCircuit circuit) {
    int[] nodes = nodes(circuit);
    int size = 2 * (nodes[nodes.length - 1] + 1);
    DMatrixRMaj siemens = new DMatrixRMaj(size, size);
    stampCable(siemens, circuit, nodes);
    stampTerminators(siemens, circuit, nodes, false);
    stamp(siemens, 1, COMMON, 1);
    return new NodalAnalysis(nodes, siemens, new DMatrixRMaj(size, 1));
  }

  private NodalAnalysis(int[] nodeOfItem, DMatrixRMaj siemens, DMatrixRMaj amperes) {
    this.nodeOfItem = nodeOfItem;
    this.amperes = amperes;
    ohms = new DMatrixRMaj(siemens.numRows, siemens.numRows);
    if (!CommonOps_DDRM.invertSPD(siemens, ohms)) {
      throw new IllegalStateException("singular");
    }
  }

  /** D1 − D0 at every item. */
  double[] differences() {
    return Arrays.stream(levels()).mapToDouble(level -> level[0] - level[1]).toArray();
  }

  /** D1 and D0 against common, at every item. */
  double[][] levels() {
    DMatrixRMaj volts = new DMatrixRMaj(amperes.numRows, 1);
    CommonOps_DDRM.mult(ohms, amperes, volts);
    double[][] levels = new double[nodeOfItem.length][];
    for (int item = 0; item < levels.length; item++) {
      int d1 = 2 * nodeOfItem[item];
      levels[item] = new double[] {volts.get(d1, 0), volts.get(d1 + 1, 0)};
    }
    return levels;
  }

  /** The voltage between the conductors of one item for one ampere through those of another. */
  double transferOhms(int of, int from) {
    int d1 = 2 * nodeOfItem[of];
    int other = 2 * nodeOfItem[from];
    return ohms.get(d1, other)
        - ohms.get(d1, other + 1)
        - ohms.get(d1 + 1, other)
        + ohms.get(d1 + 1, other + 1);
  }

  /**
   * D0 − D1 at one item while a floating source holds D1 − D0 = −1.5 V at another: the current that
   * the source needs, superposed.
   */
  double receivedVolts(double[] undriven, int from, int to) {
    double sourceAmperes = (-1.5 - undriven[from]) / transferOhms(from, from);
    return -(undriven[to] + sourceAmperes * transferOhms(to, from));
  }

  private static int[] nodes(SegmentCircuit circuit) {
    int[] nodes = new int[circuit.items().size()];
    for (int item = 1; item < nodes.length; item++) {
      nodes[item] = nodes[item - 1] + (circuit.hopLengthsMetres().get(item - 1) > 0 ? 1 : 0);
    }
    return nodes;
  }

  private static void stampCable(DMatrixRMaj siemens, SegmentCircuit circuit, int[] nodes) {
    List<Double> lengths = circuit.hopLengthsMetres();
    for (int hop = 0; hop < lengths.size(); hop++) {
      if (lengths.get(hop) > 0) {
        double conductance = 1 / (circuit.ohmsPerMetre() * lengths.get(hop));
        stamp(siemens, 2 * nodes[hop], 2 * nodes[hop + 1], conductance);
        stamp(siemens, 2 * nodes[hop] + 1, 2 * nodes[hop + 1] + 1, conductance);
      }
    }
  }

  private static void stampTerminators(
      DMatrixRMaj siemens, SegmentCircuit circuit, int[] nodes, boolean capacitorsConduct) {
    for (int item = 0; item < nodes.length; item++) {
      @Nullable Terminator terminator = circuit.items().get(item).terminator();
      if (terminator != null && (capacitorsConduct || !terminator.capacitorInSeries())) {
        stamp(siemens, 2 * nodes[item], 2 * nodes[item] + 1, 1 / terminator.resistorOhms());
      }
    }
  }

  private static void stamp(DMatrixRMaj siemens, int one, int other, double conductance) {
    siemens.add(one, one, conductance);
    if (other != COMMON) {
      siemens.add(other, other, conductance);
      siemens.add(one, other, -conductance);
      siemens.add(other, one, -conductance);
    }
  }
}
