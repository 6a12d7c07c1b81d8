package org.headhouse.linter.line;

import java.util.List;
import org.headhouse.linter.stability.Internal;

/**
 * A segment with what makes its edges ring.
 *
 * <p>Between the conductors the cable is a line of an impedance Z and a speed u, so of {@code L = Z
 * / u} henries and {@code C = 1 / (Z · u)} farads a metre, with the resistance of both conductors
 * in series. A driver is an ideal source, as everywhere in this package, and its edge a ramp.
 *
 * @param circuit items, hops, loads, terminators and bias
 * @param cable what one conductor may have from winter to summer
 * @param branches what hangs on each item, in the order of the chain
 * @param impedanceOhms of the cable
 * @param metresPerSecond how fast a signal runs in it
 * @param riseSeconds of the quickest line driver, 10 to 90 %
 * @param wantedVolts what a receiver needs, with its margin
 */
@Internal
public record RingingLine(
    SegmentCircuit circuit,
    CableSpread cable,
    List<Branch> branches,
    double impedanceOhms,
    double metresPerSecond,
    double riseSeconds,
    double wantedVolts) {

  /** A ramp takes 10 to 90 % of its way in this share of its time. */
  private static final double RISE_SHARE = 0.8;

  /**
   * What hangs on the trunk at one item.
   *
   * @param stubMetres the cable from the trunk to it
   * @param receiverFarads of its receiver
   * @param terminatorFarads in series with its terminator; 0 where there is none
   */
  public record Branch(double stubMetres, double receiverFarads, double terminatorFarads) {

    public Branch {
      Require.notNegative(stubMetres, "stub");
      Require.notNegative(receiverFarads, "capacitance of a receiver");
      Require.notNegative(terminatorFarads, "capacitor of a terminator");
    }
  }

  public RingingLine {
    branches = List.copyOf(branches);
    Require.positive(impedanceOhms, "impedance");
    Require.positive(metresPerSecond, "speed");
    Require.positive(riseSeconds, "rise time");
    Require.positive(wantedVolts, "what a receiver needs");
    if (branches.size() != circuit.items().size()) {
      throw new IllegalArgumentException("every item needs its branch");
    }
  }

  /** How long an edge takes as a whole, if it takes as long as its driver says. */
  public double edgeSeconds() {
    return riseSeconds / RISE_SHARE;
  }

  /**
   * The edge that is followed: half of that. Every ramp of a length between the two is a mean of
   * such edges that begin one after the other within {@link #spreadSeconds}, and a mean of voltages
   * that all stay past a threshold does so too. So a driver may be twice as quick as it says, and
   * no ringing is missed because it just fits into the ramp.
   */
  double followedEdgeSeconds() {
    return edgeSeconds() / 2;
  }

  /** What the longest edge adds to that. */
  double spreadSeconds() {
    return edgeSeconds() - followedEdgeSeconds();
  }

  /** Trunk and stubs. */
  double cableMetres() {
    double metres = circuit.lengthMetres();
    for (Branch branch : branches) {
      metres += branch.stubMetres();
    }
    return metres;
  }

  /** The circuit with its cable at its warmest. */
  SegmentCircuit warmest() {
    return circuit.withOhmsPerMetre(cable.greatestOhmsPerMetre());
  }

  /** Half of resistance over inductance, the least. */
  double leastAlpha() {
    return leastLoopOhmsPerMetre() / (2 * henriesPerMetre());
  }

  /** The same, the most. */
  double greatestAlpha() {
    return greatestLoopOhmsPerMetre() / (2 * henriesPerMetre());
  }

  double faradsPerMetre() {
    return 1 / (impedanceOhms * metresPerSecond);
  }

  double henriesPerMetre() {
    return impedanceOhms / metresPerSecond;
  }

  /** Out and back, the least. */
  double leastLoopOhmsPerMetre() {
    return 2 * cable.leastOhmsPerMetre();
  }

  /** Out and back, the most. */
  double greatestLoopOhmsPerMetre() {
    return 2 * cable.greatestOhmsPerMetre();
  }
}
