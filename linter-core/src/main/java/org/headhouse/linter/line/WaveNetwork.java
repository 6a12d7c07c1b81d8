package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A segment as lines between nodes, all on one grid of time: each line is passed in a whole number
 * of steps. Places along the trunk are rounded, not hops, so no error adds up. A line that is
 * passed in less than half a step is no line: its items share a node, and what it can hold is held
 * by a capacitance there.
 */
final class WaveNetwork {
  /** Of the impedance, the most that one line has of resistance; longer ones are divided. */
  static final double MOST_RESISTANCE = 0.05;

  /**
   * One line.
   *
   * @param ohms from end to end, half of it at either end
   */
  record Line(int from, int to, int steps, double ohms) {}

  private final RingingLine segment;
  private final double stepSeconds;
  private final List<Line> lines = new ArrayList<>();
  private final int[] nodeOf;
  private double[] siemens;
  private double[] farads;
  private double[] amperes;
  private double[] blockedOhms;
  private double[] blockedFarads;
  private int nodes;

  private WaveNetwork(RingingLine segment, double stepSeconds) {
    this.segment = segment;
    this.stepSeconds = stepSeconds;
    int items = segment.circuit().items().size();
    nodeOf = new int[items];
    siemens = new double[2 * items];
    farads = new double[2 * items];
    amperes = new double[2 * items];
    blockedOhms = new double[2 * items];
    blockedFarads = new double[2 * items];
  }

  /** The network of a segment with the least resistance that its cable may have. */
  static WaveNetwork of(RingingLine segment, double stepSeconds) {
    WaveNetwork network = new WaveNetwork(segment, stepSeconds);
    int trunk = network.newNode();
    double metres = 0;
    double laidMetres = 0;
    long laidSteps = 0;
    for (int item = 0; item < network.nodeOf.length; item++) {
      metres += item == 0 ? 0 : segment.circuit().hopLengthsMetres().get(item - 1);
      int steps = (int) (Math.round(network.steps(metres)) - laidSteps);
      if (steps > 0) {
        trunk = network.run(trunk, steps, metres - laidMetres);
        laidMetres = metres;
        laidSteps += steps;
      }
      network.addItem(item, trunk);
    }
    return network;
  }

  private double steps(double metres) {
    return metres / segment.metresPerSecond() / stepSeconds;
  }

  private int newNode() {
    if (nodes == siemens.length) {
      siemens = Arrays.copyOf(siemens, 2 * nodes);
      farads = Arrays.copyOf(farads, 2 * nodes);
      amperes = Arrays.copyOf(amperes, 2 * nodes);
      blockedOhms = Arrays.copyOf(blockedOhms, 2 * nodes);
      blockedFarads = Arrays.copyOf(blockedFarads, 2 * nodes);
    }
    return nodes++;
  }

  /** Lays a run of cable; the node at its far end. */
  private int run(int from, int steps, double metres) {
    double ohms = metres * segment.leastLoopOhmsPerMetre();
    int pieces =
        (int)
            Math.max(
                1, Math.min(steps, Math.ceil(ohms / MOST_RESISTANCE / segment.impedanceOhms())));
    int node = from;
    int laid = 0;
    for (int piece = 1; piece <= pieces; piece++) {
      int until = (int) ((long) steps * piece / pieces);
      int next = newNode();
      lines.add(new Line(node, next, until - laid, ohms / pieces));
      laid = until;
      node = next;
    }
    return node;
  }

  private void addItem(int item, int trunk) {
    RingingLine.Branch branch = segment.branches().get(item);
    double steps = steps(branch.stubMetres());
    int whole = (int) Math.round(steps);
    int node = whole > 0 ? run(trunk, whole, branch.stubMetres()) : trunk;
    double rest = Math.max(0, steps - whole) * stepSeconds / segment.impedanceOhms();
    nodeOf[item] = node;
    farads[node] += rest + branch.receiverFarads();
    SegmentItem fitted = segment.circuit().items().get(item);
    siemens[node] +=
        fitted.loadSiemens() / 2 + fitted.steadyTerminatorSiemens() + fitted.biasSiemens() / 2;
    amperes[node] += fitted.biasAmperes() / 2;
    Terminator terminator = fitted.terminator();
    if (terminator != null && terminator.capacitorInSeries()) {
      // Two at one node: as one of both, which lets through no more and holds as much.
      double ohms = terminator.resistorOhms();
      blockedOhms[node] = blockedOhms[node] == 0 ? ohms : 1 / (1 / ohms + 1 / blockedOhms[node]);
      blockedFarads[node] += branch.terminatorFarads();
    }
  }

  RingingLine segment() {
    return segment;
  }

  double stepSeconds() {
    return stepSeconds;
  }

  int nodes() {
    return nodes;
  }

  List<Line> lines() {
    return lines;
  }

  /** The steps of all lines together. */
  long stepsOfLines() {
    long steps = 0;
    for (Line line : lines) {
      steps += line.steps();
    }
    return steps;
  }

  /** The node of an item's terminals. */
  int nodeOf(int item) {
    return nodeOf[item];
  }

  double siemens(int node) {
    return siemens[node];
  }

  double farads(int node) {
    return farads[node];
  }

  /** From the bias. */
  double amperes(int node) {
    return amperes[node];
  }

  /** The resistor of a terminator that blocks direct current; 0 where there is none. */
  double blockedOhms(int node) {
    return blockedOhms[node];
  }

  double blockedFarads(int node) {
    return blockedFarads[node];
  }
}
