package org.headhouse.linter.line;

import java.util.Arrays;
import java.util.List;

/**
 * What an edge sent by one sender does to all nodes of a segment, step by step, as the difference
 * from the final state for a sender that ends at one volt.
 *
 * <p>Lines by the method of characteristics (F. H. Branin, Transient Analysis of Lossless
 * Transmission Lines, Proceedings of the IEEE 55, 1967): {@code v1 − Z·i1} at one end is {@code v2
 * + Z·i2} at the other one delay earlier, with half of the resistance of a line in series with
 * either end. Capacitances by the trapezoidal rule, which neither adds energy nor takes any.
 */
final class WaveRun {
  private final WaveNetwork network;
  private final double impedanceOhms;
  private final int lines;
  private final int[] from;
  private final int[] to;
  private final int[] steps;
  private final double[] halfOhms;
  private final double[][] towardsFrom;
  private final double[][] towardsTo;
  private final double[] nodeSiemens;
  private final double[] faradSiemens;
  private final double[] blockedSiemens;
  private final double[] volts;
  private final double[] incoming;
  private final double[] capacitorAmperes;
  private final double[] blockedVolts;
  private final double[] blockedAmperes;
  private final double[] arrivedAtFrom;
  private final double[] arrivedAtTo;
  private final double[] heldBefore;
  private final double[] blockedBefore;
  private final double[] siemensOf;
  private final int[] slotOf;

  WaveRun(WaveNetwork network) {
    this.network = network;
    impedanceOhms = network.segment().impedanceOhms();
    List<WaveNetwork.Line> all = network.lines();
    lines = all.size();
    from = all.stream().mapToInt(WaveNetwork.Line::from).toArray();
    to = all.stream().mapToInt(WaveNetwork.Line::to).toArray();
    steps = all.stream().mapToInt(WaveNetwork.Line::steps).toArray();
    halfOhms = all.stream().mapToDouble(line -> line.ohms() / 2).toArray();
    towardsFrom = new double[lines][];
    towardsTo = new double[lines][];
    int nodes = network.nodes();
    nodeSiemens = new double[nodes];
    faradSiemens = new double[nodes];
    blockedSiemens = new double[nodes];
    volts = new double[nodes];
    incoming = new double[nodes];
    capacitorAmperes = new double[nodes];
    blockedVolts = new double[nodes];
    blockedAmperes = new double[nodes];
    siemensOf = new double[lines];
    slotOf = new int[lines];
    arrivedAtFrom = new double[lines];
    arrivedAtTo = new double[lines];
    heldBefore = new double[nodes];
    blockedBefore = new double[nodes];
    for (int line = 0; line < lines; line++) {
      towardsFrom[line] = new double[steps[line]];
      towardsTo[line] = new double[steps[line]];
      siemensOf[line] = 1 / (impedanceOhms + halfOhms[line]);
      nodeSiemens[from[line]] += siemensOf[line];
      nodeSiemens[to[line]] += siemensOf[line];
    }
    for (int node = 0; node < nodes; node++) {
      faradSiemens[node] = 2 * network.farads(node) / network.stepSeconds();
      blockedSiemens[node] =
          network.blockedOhms(node) == 0 ? 0 : 1 / (network.blockedOhms(node) + halfStepOhms(node));
      nodeSiemens[node] += network.siemens(node) + faradSiemens[node] + blockedSiemens[node];
    }
  }

  private double halfStepOhms(int node) {
    return network.stepSeconds() / (2 * network.blockedFarads(node));
  }

  /** The difference of a node from its final voltage; it begins with all of it, turned. */
  double difference(int node) {
    return volts[node];
  }

  /** Everything as far from its final value as that is from zero. */
  void begin(SteadyTree.State end) {
    for (int node = 0; node < volts.length; node++) {
      volts[node] = -end.volts(node);
      capacitorAmperes[node] = 0;
      blockedAmperes[node] = 0;
      blockedVolts[node] = volts[node];
    }
    for (int line = 0; line < lines; line++) {
      double amperes = -end.amperes(line);
      double middle = volts[from[line]] - halfOhms[line] * amperes;
      Arrays.fill(towardsTo[line], middle + impedanceOhms * amperes);
      Arrays.fill(towardsFrom[line], middle - impedanceOhms * amperes);
    }
  }

  /**
   * The next step.
   *
   * @param root the node of the sender
   * @param rootVolts the difference of the sender
   */
  void advance(int root, double rootVolts) {
    Arrays.fill(incoming, 0);
    for (int line = 0; line < lines; line++) {
      int slot = slotOf[line] + 1;
      slot = slot == steps[line] ? 0 : slot;
      slotOf[line] = slot;
      double siemens = siemensOf[line];
      incoming[from[line]] += towardsFrom[line][slot] * siemens;
      incoming[to[line]] += towardsTo[line][slot] * siemens;
    }
    for (int node = 0; node < volts.length; node++) {
      double before = volts[node];
      double held = faradSiemens[node] * before + capacitorAmperes[node];
      double blocked = 0;
      if (blockedSiemens[node] > 0) {
        blocked = blockedVolts[node] + halfStepOhms(node) * blockedAmperes[node];
      }
      double now =
          node == root
              ? rootVolts
              : (incoming[node] + held + blocked * blockedSiemens[node]) / nodeSiemens[node];
      capacitorAmperes[node] = faradSiemens[node] * now - held;
      heldBefore[node] = held;
      blockedBefore[node] = blocked;
      if (blockedSiemens[node] > 0) {
        double amperes = (now - blocked) * blockedSiemens[node];
        blockedVolts[node] = blocked + halfStepOhms(node) * amperes;
        blockedAmperes[node] = amperes;
      }
      volts[node] = now;
    }
    for (int line = 0; line < lines; line++) {
      int slot = slotOf[line];
      double siemens = siemensOf[line];
      double passing = impedanceOhms - halfOhms[line];
      double atFrom = volts[from[line]];
      double atTo = volts[to[line]];
      double intoFrom = (atFrom - towardsFrom[line][slot]) * siemens;
      double intoTo = (atTo - towardsTo[line][slot]) * siemens;
      arrivedAtFrom[line] = towardsFrom[line][slot];
      arrivedAtTo[line] = towardsTo[line][slot];
      towardsTo[line][slot] = atFrom + passing * intoFrom;
      towardsFrom[line][slot] = atTo + passing * intoTo;
    }
  }

  /**
   * The most that any node can still get from the energy that is there, once the sender is still.
   * By {@code v² = 2·∫v·(dv/dx)·dx} from the sender to a node, as in {@link RingEnergy}, with W for
   * the energy and W′ for that of the change of everything in a second, {@code v² ≤ 4·Z·(√(W · W′)
   * + α·W)}. Neither grows.
   *
   * <p>A wave e on its way holds {@code e²/4Z} for the time of a step. A capacitance by the
   * trapezoidal rule is a line of one step, so it holds a wave as well.
   */
  double mostVolts() {
    double squares = 0;
    double changes = 0;
    for (int line = 0; line < lines; line++) {
      double atFrom = arrivedAtFrom[line];
      double atTo = arrivedAtTo[line];
      int slot = slotOf[line];
      for (int later = 0; later < steps[line]; later++) {
        slot = slot + 1 == steps[line] ? 0 : slot + 1;
        double nextFrom = towardsFrom[line][slot];
        double nextTo = towardsTo[line][slot];
        squares += nextFrom * nextFrom + nextTo * nextTo;
        changes += square(nextFrom - atFrom) + square(nextTo - atTo);
        atFrom = nextFrom;
        atTo = nextTo;
      }
    }
    double step = network.stepSeconds();
    double joules = squares * step / (4 * impedanceOhms);
    double changing = changes * step / (4 * impedanceOhms);
    for (int node = 0; node < volts.length; node++) {
      if (faradSiemens[node] > 0) {
        double wave = volts[node] + capacitorAmperes[node] / faradSiemens[node];
        joules += network.farads(node) * square(wave) / 2;
        changing += network.farads(node) * square(wave - heldBefore[node] / faradSiemens[node]) / 2;
      }
      if (blockedSiemens[node] > 0) {
        double wave = blockedVolts[node] + halfStepOhms(node) * blockedAmperes[node];
        joules += network.blockedFarads(node) * square(wave) / 2;
        changing += network.blockedFarads(node) * square(wave - blockedBefore[node]) / 2;
      }
    }
    double alpha = network.segment().greatestAlpha();
    return Math.sqrt(4 * impedanceOhms * (Math.sqrt(joules * changing) / step + alpha * joules));
  }

  private static double square(double value) {
    return value * value;
  }
}
