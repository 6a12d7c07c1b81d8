package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.List;

/**
 * Any network of resistors and current sources, solved by Gaussian elimination on its conductance
 * matrix (C.-W. Ho, A. Ruehli, P. Brennan, The Modified Nodal Approach, IEEE CAS-22, 1975, without
 * the branches that this one has no need of). Node 0 is common.
 */
final class NodalNetwork {
  private record Resistor(int from, int to, double siemens) {}

  private final List<Resistor> resistors = new ArrayList<>();
  private final List<double[]> sources = new ArrayList<>();
  private int nodes = 1;

  int node() {
    return nodes++;
  }

  void resistor(int from, int to, double ohms) {
    resistors.add(new Resistor(from, to, 1 / ohms));
  }

  /** A supply against common with a resistor in front. */
  void supply(int to, double volts, double ohms) {
    resistor(to, 0, ohms);
    current(0, to, volts / ohms);
  }

  void current(int from, int to, double amperes) {
    sources.add(new double[] {from, to, amperes});
  }

  /** The voltages of all nodes; every node leaks to common by 10 Gohm. */
  double[] volts() {
    int size = nodes - 1;
    double[][] rows = new double[size][size + 1];
    for (int node = 0; node < size; node++) {
      rows[node][node] += 1e-10;
    }
    for (Resistor one : resistors) {
      add(rows, one.from, one.from, one.siemens);
      add(rows, one.to, one.to, one.siemens);
      add(rows, one.from, one.to, -one.siemens);
      add(rows, one.to, one.from, -one.siemens);
    }
    for (double[] one : sources) {
      if (one[0] > 0) {
        rows[(int) one[0] - 1][size] -= one[2];
      }
      if (one[1] > 0) {
        rows[(int) one[1] - 1][size] += one[2];
      }
    }
    solve(rows);
    double[] volts = new double[nodes];
    for (int node = 1; node < nodes; node++) {
      volts[node] = rows[node - 1][size];
    }
    return volts;
  }

  private static void add(double[][] rows, int from, int to, double siemens) {
    if (from > 0 && to > 0) {
      rows[from - 1][to - 1] += siemens;
    }
  }

  private static void solve(double[][] rows) {
    int size = rows.length;
    for (int pivot = 0; pivot < size; pivot++) {
      int best = pivot;
      for (int row = pivot + 1; row < size; row++) {
        best = Math.abs(rows[row][pivot]) > Math.abs(rows[best][pivot]) ? row : best;
      }
      double[] swap = rows[pivot];
      rows[pivot] = rows[best];
      rows[best] = swap;
      for (int row = 0; row < size; row++) {
        double factor = row == pivot ? 0 : rows[row][pivot] / rows[pivot][pivot];
        for (int column = pivot; factor != 0 && column <= size; column++) {
          rows[row][column] -= factor * rows[pivot][column];
        }
      }
    }
    for (int row = 0; row < size; row++) {
      rows[row][size] /= rows[row][row];
    }
  }
}
