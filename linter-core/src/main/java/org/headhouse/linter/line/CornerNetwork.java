package org.headhouse.linter.line;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A {@link Ladder} whose parts lie anywhere between two values, and the least voltage that one of
 * its nodes can have: at a corner of all those ranges, and at which one is proved.
 *
 * <p>The voltage {@code v[t]} of the node that is asked about is a quotient of two expressions that
 * are linear in each single part, so it moves in one direction only as that part moves: the least
 * is at a corner. With {@code z[k] > 0} the voltage of node k for one ampere into node t, which
 * falls on both sides of t, the derivatives are
 *
 * <pre>
 *   ∂v[t]/∂y[k] = z[k] · (E[k] − v[k])                      part y[k] with source E[k] at node k
 *   ∂v[t]/∂G[h] = −(z[far] − z[near]) · (v[far] − v[near])  run of cable 1/G[h], near is towards t
 * </pre>
 *
 * At the least voltage a part is therefore at its least conductance where its source is above the
 * node, and at its greatest where it is below; a run of cable has its greatest resistance where
 * current flows towards t, and its least where it flows away. Read as a law of each part, every one
 * of these lets more current through for more voltage, so that a network of them has one solution
 * only, and the corner that fulfils all of them is the worst.
 *
 * <p>The search starts from the corner that the middle of all ranges asks for, changes what does
 * not agree, and keeps each change that lowers the voltage: no corner comes twice. For one source
 * nothing has to be changed.
 */
final class CornerNetwork {
  /** Voltages closer than this, of the greatest one, are equal but for rounding. */
  private static final double ROUNDING = 1e-12;

  private final List<CornerPart> parts;
  private final double[] takenAmperes;
  private final double[] leastOhms;
  private final double[] greatestOhms;
  private final @Nullable Double heldVolts;
  private final double[] middleVolts;

  /**
   * @param parts any number at each node
   * @param takenAmperes from each node whatever its voltage
   * @param leastOhms of the cable from each node to the next
   * @param greatestOhms the same at its most
   * @param heldVolts what the first node is held at, or null where it is not held
   */
  CornerNetwork(
      List<CornerPart> parts,
      double[] takenAmperes,
      double[] leastOhms,
      double[] greatestOhms,
      @Nullable Double heldVolts) {
    this.parts = List.copyOf(parts);
    this.takenAmperes = takenAmperes;
    this.leastOhms = leastOhms;
    this.greatestOhms = greatestOhms;
    this.heldVolts = heldVolts;
    this.middleVolts = middleVolts();
  }

  /** The least voltage of a node over all corners; with one source O(n). */
  double leastVolts(int target) {
    boolean[] corner = wanted(middleVolts, target, new boolean[parts.size() * size() + hops()]);
    double[] volts = volts(corner);
    boolean lowered = true;
    while (lowered) {
      lowered = false;
      boolean[] wanted = wanted(volts, target, corner);
      for (int part = 0; part < corner.length; part++) {
        if (wanted[part] != corner[part]) {
          corner[part] = wanted[part];
          double[] changed = volts(corner);
          if (changed[target] < volts[target]) {
            volts = changed;
            lowered = true;
          } else {
            corner[part] = !wanted[part];
          }
        }
      }
    }
    return volts[target];
  }

  private int hops() {
    return leastOhms.length;
  }

  private int size() {
    return hops() + 1;
  }

  private double[] middleVolts() {
    double[] shunts = new double[size()];
    double[] sources = new double[size()];
    double[] ohms = new double[hops()];
    for (CornerPart part : parts) {
      for (int node = 0; node < size(); node++) {
        double siemens = (part.leastSiemens()[node] + part.greatestSiemens()[node]) / 2;
        shunts[node] += siemens;
        sources[node] += siemens * part.volts()[node];
      }
    }
    for (int hop = 0; hop < ohms.length; hop++) {
      ohms[hop] = (leastOhms[hop] + greatestOhms[hop]) / 2;
    }
    return solved(shunts, sources, ohms);
  }

  /**
   * The voltages at a corner: of each part whether its conductance, then its cable, is greatest.
   */
  private double[] volts(boolean[] corner) {
    double[] shunts = new double[size()];
    double[] sources = new double[size()];
    double[] ohms = new double[hops()];
    int at = 0;
    for (CornerPart part : parts) {
      for (int node = 0; node < size(); node++) {
        double[] chosen = corner[at++] ? part.greatestSiemens() : part.leastSiemens();
        shunts[node] += chosen[node];
        sources[node] += chosen[node] * part.volts()[node];
      }
    }
    for (int hop = 0; hop < ohms.length; hop++) {
      ohms[hop] = corner[at++] ? greatestOhms[hop] : leastOhms[hop];
    }
    return solved(shunts, sources, ohms);
  }

  private double[] solved(double[] shunts, double[] sources, double[] ohms) {
    for (int node = 0; node < sources.length; node++) {
      sources[node] -= takenAmperes[node];
    }
    Ladder ladder = new Ladder(shunts, sources, ohms);
    return heldVolts == null ? ladder.volts() : ladder.volts(heldVolts);
  }

  /**
   * The corner that these voltages ask for, so that the target has its least.
   *
   * @param undecided what a part is left at that has no voltage across it
   */
  private boolean[] wanted(double[] volts, int target, boolean[] undecided) {
    double rounding = ROUNDING * greatest(volts);
    boolean[] wanted = undecided.clone();
    int at = 0;
    for (CornerPart part : parts) {
      for (int node = 0; node < volts.length; node++) {
        decide(wanted, at++, volts[node] - part.volts()[node], rounding);
      }
    }
    for (int hop = 0; hop < hops(); hop++) {
      double onward = volts[hop] - volts[hop + 1];
      decide(wanted, at++, hop < target ? onward : -onward, rounding);
    }
    return wanted;
  }

  private static void decide(boolean[] wanted, int at, double across, double rounding) {
    if (Math.abs(across) > rounding) {
      wanted[at] = across > 0;
    }
  }

  private static double greatest(double[] volts) {
    double greatest = 0;
    for (double one : volts) {
      greatest = Math.max(greatest, Math.abs(one));
    }
    return greatest;
  }
}
