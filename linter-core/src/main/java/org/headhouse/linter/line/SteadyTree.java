package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.List;

/**
 * The steady state of a {@link WaveNetwork} whose sender holds one volt: a tree with the sender as
 * its root, solved like a {@link Ladder} in one pass from the leaves and one back, O(n).
 */
final class SteadyTree {
  private final WaveNetwork network;
  private final int[] order;
  private final int[] lineTo;
  private final int[] parent;
  private final int[] stepsFromRoot;

  SteadyTree(WaveNetwork network, int root) {
    this.network = network;
    int nodes = network.nodes();
    order = new int[nodes];
    lineTo = new int[nodes];
    parent = new int[nodes];
    stepsFromRoot = new int[nodes];
    List<List<Integer>> at = new ArrayList<>(nodes);
    for (int node = 0; node < nodes; node++) {
      at.add(new ArrayList<>(3));
    }
    for (int line = 0; line < network.lines().size(); line++) {
      at.get(network.lines().get(line).from()).add(line);
      at.get(network.lines().get(line).to()).add(line);
    }
    order[0] = root;
    lineTo[root] = -1;
    parent[root] = -1;
    int found = 1;
    for (int next = 0; next < found; next++) {
      int node = order[next];
      for (int line : at.get(node)) {
        if (line != lineTo[node]) {
          WaveNetwork.Line one = network.lines().get(line);
          int other = one.from() == node ? one.to() : one.from();
          order[found++] = other;
          lineTo[other] = line;
          parent[other] = node;
          stepsFromRoot[other] = stepsFromRoot[node] + one.steps();
        }
      }
    }
  }

  /** How many steps a front takes from the sender to a node. */
  int stepsTo(int node) {
    return stepsFromRoot[node];
  }

  /** Voltages and currents. */
  static final class State {
    private final double[] volts;
    private final double[] amperes;

    private State(double[] volts, double[] amperes) {
      this.volts = volts;
      this.amperes = amperes;
    }

    double volts(int node) {
      return volts[node];
    }

    /** In a line, from its first node to its second. */
    double amperes(int line) {
      return amperes[line];
    }
  }

  /**
   * The state for a voltage of the sender.
   *
   * @param rootVolts what the sender holds
   * @param ohmsScale all resistances of the cable, as a multiple of what the network has
   * @param biased whether the bias gives its current
   */
  State state(double rootVolts, double ohmsScale, boolean biased) {
    int nodes = network.nodes();
    double[] onwardSiemens = new double[nodes];
    double[] onwardAmperes = new double[nodes];
    for (int at = nodes - 1; at > 0; at--) {
      int node = order[at];
      onwardSiemens[node] += network.siemens(node);
      onwardAmperes[node] += biased ? network.amperes(node) : 0;
      double share = share(node, ohmsScale, onwardSiemens);
      onwardSiemens[parent[node]] += share * onwardSiemens[node];
      onwardAmperes[parent[node]] += share * onwardAmperes[node];
    }
    double[] volts = new double[nodes];
    double[] amperes = new double[network.lines().size()];
    volts[order[0]] = rootVolts;
    for (int at = 1; at < nodes; at++) {
      int node = order[at];
      WaveNetwork.Line line = network.lines().get(lineTo[node]);
      volts[node] =
          share(node, ohmsScale, onwardSiemens)
              * (volts[parent[node]] + ohmsScale * line.ohms() * onwardAmperes[node]);
      double outward = onwardSiemens[node] * volts[node] - onwardAmperes[node];
      amperes[lineTo[node]] = line.to() == node ? outward : -outward;
    }
    return new State(volts, amperes);
  }

  private double share(int node, double ohmsScale, double[] onwardSiemens) {
    double ohms = ohmsScale * network.lines().get(lineTo[node]).ohms();
    return 1 / (1 + ohms * onwardSiemens[node]);
  }
}
