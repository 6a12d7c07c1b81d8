package org.headhouse.linter.line;

/**
 * A chain of nodes over a common return: a series resistance from each node to the next, at each
 * node a conductance and a current source to the return. Solved in one pass from the end and one
 * back, O(n), exactly.
 *
 * <p>Everything from node k on, seen from node k, is a conductance {@code Y[k]} beside a source
 * {@code J[k]} (Norton). With {@code a[k] = 1 / (1 + R[k] · Y[k+1])}:
 *
 * <pre>
 *   Y[k] = y[k] + a[k] · Y[k+1]
 *   J[k] = s[k] + a[k] · J[k+1]
 *   v[k+1] = a[k] · (v[k] + R[k] · J[k+1])
 * </pre>
 *
 * The last follows from the current through the hop, {@code Y[k+1] · v[k+1] − J[k+1]}. Only
 * resistances of hops occur, never their inverses, so a hop of no length needs no care; and for
 * sources of one sign nothing is subtracted, so nothing cancels.
 */
final class Ladder {
  private final double[] shuntSiemens;
  private final double[] sourceAmperes;
  private final double[] seriesOhms;
  private final double[] onwardSiemens;
  private final double[] onwardAmperes;

  /**
   * @param shuntSiemens from each node to the return
   * @param sourceAmperes into each node
   * @param seriesOhms from each node to the next, one fewer
   */
  Ladder(double[] shuntSiemens, double[] sourceAmperes, double[] seriesOhms) {
    this.shuntSiemens = shuntSiemens;
    this.sourceAmperes = sourceAmperes;
    this.seriesOhms = seriesOhms;
    onwardSiemens = shuntSiemens.clone();
    onwardAmperes = sourceAmperes.clone();
    for (int node = size() - 2; node >= 0; node--) {
      double share = share(node);
      onwardSiemens[node] += share * onwardSiemens[node + 1];
      onwardAmperes[node] += share * onwardAmperes[node + 1];
    }
  }

  int size() {
    return shuntSiemens.length;
  }

  /** The voltages of all nodes; infinite where a source meets no conductance at all. */
  double[] volts() {
    return volts(onwardAmperes[0] / onwardSiemens[0]);
  }

  /** The voltages of all nodes where the first one is held at a voltage. */
  double[] volts(double first) {
    double[] volts = new double[size()];
    volts[0] = first;
    for (int node = 0; node < size() - 1; node++) {
      volts[node + 1] = nextVolts(node, volts[node]);
    }
    return volts;
  }

  /** The voltage of the node after one that is held at a voltage. */
  double nextVolts(int node, double volts) {
    return share(node) * (volts + seriesOhms[node] * onwardAmperes[node + 1]);
  }

  /** The conductance between a node and the return, sources dead. */
  double siemensAt(int node) {
    return onwardSiemens[node] + reversed().onwardSiemens[size() - 1 - node] - shuntSiemens[node];
  }

  /** The conductance between each node and the return, sources dead, O(n). */
  double[] siemens() {
    double[] siemens = new double[size()];
    double before = 0;
    for (int node = 0; node < size(); node++) {
      siemens[node] = before + onwardSiemens[node];
      if (node < size() - 1) {
        double here = before + shuntSiemens[node];
        before = here / (1 + seriesOhms[node] * here);
      }
    }
    return siemens;
  }

  /** The same ladder, seen from its end. */
  Ladder reversed() {
    return new Ladder(reversed(shuntSiemens), reversed(sourceAmperes), reversed(seriesOhms));
  }

  private double share(int node) {
    return 1 / (1 + seriesOhms[node] * onwardSiemens[node + 1]);
  }

  private static double[] reversed(double[] values) {
    double[] reversed = new double[values.length];
    for (int at = 0; at < values.length; at++) {
      reversed[at] = values[values.length - 1 - at];
    }
    return reversed;
  }
}
