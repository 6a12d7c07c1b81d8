package org.headhouse.linter.line;

import java.util.List;

/**
 * How long a segment rings at most, by the energy that an edge leaves in it; O(n) for all senders.
 * It holds for every network of lines, stubs, loads and terminators, however its reflections add
 * up, because it does not follow them: none of these parts gives energy back, and the cable takes
 * some all the time.
 *
 * <p><b>What decays.</b> After a step at a sender take the difference of every voltage v and
 * current i from its final value. It is what the same network does by itself with the sender
 * shorted ({@code L·i' = −R·i − dv/dx}, {@code C·v' = −di/dx} and currents of loads and
 * terminators). {@code W = W_M + W_E} is its energy in inductances and capacitances, {@code α =
 * R/2L} of the cable.
 *
 * <p><b>How fast.</b> With q(x) the charge on all capacitances beyond x, seen from the sender, let
 * {@code Φ = W + α·∫L·q·i·dx} (a Lyapunov function by the multiplier method, for instance in V.
 * Komornik, Exact Controllability and Stabilization, 1994; derived here). {@code dq/dx = −C·v}, and
 * q' is i less the current j that loads and terminators take beyond x. So
 *
 * <pre>
 *   Φ' = −2α·Φ − P − α·∫L·j·i·dx
 * </pre>
 *
 * with the power {@code P = Σ G·v²} of all conductances. By Schwarz's inequality {@code j² ≤ ΣG ·
 * P}, so the last term is at most {@code P + ½·α²·ΣG·ΣL·W_M}. A terminator with a capacitor adds
 * {@code ½·α²·R·C·W_E} likewise. And {@code q² ≤ (C beyond x) · 2·W_E}, so with {@code σ = α ·
 * √∫L·(C beyond x)·dx} the cross term is at most {@code 2σ·√(W_E · W_M)}, and
 *
 * <pre>
 *   Φ ≤ (1 + σ)·W,   W_E ≤ Φ/(1 − σ²),   W_M ≤ Φ/(1 − σ²),
 *   Φ(t) ≤ Φ(0) · exp(−2α·(1 − κ)·t),   κ = α·(ΣG·ΣL + ΣR·C) / (4·(1 − σ²))
 * </pre>
 *
 * <p><b>From energy to voltage.</b> A ramp of the length r is the mean of steps that begin within
 * r, so its energy is at most that of a step r earlier. What changes in a second is the answer to a
 * pulse of 1/r for the time r, which decays likewise from the energy W' that the pulse has brought.
 * The sender's own difference is zero. Along the cable from it to any receiver {@code v² =
 * 2·∫v·(dv/dx)·dx} and {@code dv/dx = −L·di/dt − R·i}, through every junction, since v does not
 * jump there. By Schwarz's inequality, with Φ and Φ' at that time,
 *
 * <pre>
 *   v² ≤ 4·Z·(√(Φ·Φ') + 2α·Φ) / (1 − σ²)
 * </pre>
 *
 * <p><b>The energy at the beginning</b> follows from the direct currents. While the front has not
 * reached a terminator, that one sees its final voltage h as difference, and has taken {@code h²/R}
 * all that time: at the ends matched by their resistors of a line without loss nothing is left but
 * what is on stubs and receivers. For W' see {@link PulseEnergy}.
 *
 * <p>The difference allowed is what the weakest receiver has over its need, an edge leading from
 * −1.5 V to +1.5 V, less what earlier edges leave. They began a bit earlier at least, which is
 * twice the time in question where that is half a bit. If the bound has fallen by {@code exp(−λ)}
 * for an edge, its amplitude has for the one before by as much again, and all of them together
 * leave {@code exp(−λ)/(1 − exp(−λ))} of it.
 */
final class RingEnergy {
  /** With no more, earlier edges would leave too much. */
  private static final double LEAST_TIME_CONSTANTS = Math.log(10);

  private final RingingLine line;
  private final double[] farads;
  private final double[] coldVolts;
  private final double[] coldVoltsBack;
  private final double[] hotVolts;
  private final double[] hotVoltsBack;

  private RingEnergy(RingingLine line) {
    this.line = line;
    SegmentCircuit circuit = line.circuit();
    farads = new double[circuit.items().size()];
    for (int item = 0; item < farads.length; item++) {
      RingingLine.Branch branch = line.branches().get(item);
      farads[item] =
          branch.stubMetres() * line.faradsPerMetre()
              + branch.receiverFarads()
              + branch.terminatorFarads();
    }
    Ladder cold = steady(circuit.withOhmsPerMetre(line.cable().leastOhmsPerMetre()));
    Ladder hot = steady(line.warmest());
    coldVolts = cold.volts(1);
    coldVoltsBack = cold.reversed().volts(1);
    hotVolts = hot.volts(1);
    hotVoltsBack = hot.reversed().volts(1);
  }

  private static Ladder steady(SegmentCircuit circuit) {
    return DifferentialNetwork.ladder(
        circuit,
        item -> item.loadSiemens() + 2 * item.steadyTerminatorSiemens() + item.biasSiemens(),
        new double[circuit.items().size()]);
  }

  /**
   * From the beginning of an edge at a sender until every receiver has settled.
   *
   * @return infinite where a receiver gets no more than it needs, or the cable has too little
   *     resistance or too much for this bound
   */
  static double seconds(RingingLine line) {
    ReceivedVoltage weakest = ReceivedVoltage.weakestWhenSteady(line.warmest());
    double allowed =
        weakest == null ? 0 : (weakest.volts() - line.wantedVolts()) / (2 * Levels.DRIVER_VOLTS);
    return allowed > 0 && line.leastAlpha() > 0
        ? new RingEnergy(line).seconds(allowed)
        : Double.POSITIVE_INFINITY;
  }

  private double seconds(double allowed) {
    double alpha = line.leastAlpha();
    double sigma = alpha * Math.sqrt(squareSeconds());
    double kappa = alpha * takenSeconds() / (4 * (1 - sigma * sigma));
    if (sigma >= 1 || kappa >= 1) {
      return Double.POSITIVE_INFINITY;
    }
    double factor = 4 * line.impedanceOhms() / (1 - sigma * sigma) / (allowed * allowed);
    double[] pulses = PulseEnergy.ofAllSenders(line, farads);
    double longest = 0;
    int last = farads.length - 1;
    Sides right = new Sides(coldVolts, hotVolts, false);
    Sides left = new Sides(coldVoltsBack, hotVoltsBack, true);
    for (int sender = 0; sender <= last; sender++) {
      Side after = right.of(sender);
      Side before = left.of(last - sender);
      double phi = phi(after, before, sender, sigma);
      double squares =
          Math.sqrt(phi * (1 + sigma) * pulses[sender]) / line.followedEdgeSeconds()
              + 2 * line.greatestAlpha() * phi;
      double ringing = timeConstants(Math.log(factor * squares)) / (2 * alpha * (1 - kappa));
      longest = Math.max(longest, ringing + Math.max(after.waitSeconds, before.waitSeconds));
    }
    return line.edgeSeconds() + longest;
  }

  /**
   * Φ where the wait begins or, where a terminator has taken its part, where it ends. At the
   * beginning the two energies are known each, then only their sum.
   */
  private double phi(Side after, Side before, int sender, double sigma) {
    double amperes = after.amperes + before.amperes;
    double stub = line.branches().get(sender).stubMetres() * line.henriesPerMetre();
    double electric = after.electric + before.electric + farads[sender] / 2;
    double magnetic = after.magnetic + before.magnetic + stub * amperes * amperes / 2;
    double taken = after.taken + before.taken;
    return taken > 0
        ? (1 + sigma) * Math.max(0, electric + magnetic - taken)
        : electric + magnetic + 2 * sigma * Math.sqrt(electric * magnetic);
  }

  /** How far the square has to fall, with what earlier edges leave. */
  private static double timeConstants(double alone) {
    double least = Math.max(LEAST_TIME_CONSTANTS, alone);
    return Math.max(LEAST_TIME_CONSTANTS, alone - 2 * Math.log(1 - 1 / Math.expm1(least)));
  }

  /** {@code ∫L·(C beyond x)·dx}, from the end from which it is more, and that of stubs. */
  private double squareSeconds() {
    double metres = 0;
    double held = 0;
    double forwards = 0;
    double stubs = 0;
    double longestStub = 0;
    int last = farads.length - 1;
    double total = 0;
    for (double one : farads) {
      total += one;
    }
    total += line.circuit().lengthMetres() * line.faradsPerMetre();
    for (int item = last; item >= 0; item--) {
      double stub = line.branches().get(item).stubMetres();
      held += farads[item];
      stubs += stub * farads[item];
      longestStub = Math.max(longestStub, stub);
      if (item > 0) {
        double hop = line.circuit().hopLengthsMetres().get(item - 1);
        double beyond = held + hop * line.faradsPerMetre() / 2;
        forwards += hop * beyond;
        held += hop * line.faradsPerMetre();
        metres += hop;
      }
    }
    // What is beyond x from one end is not beyond it from the other.
    double backwards = metres * total - forwards;
    return line.henriesPerMetre() * (Math.max(forwards, backwards) + stubs + longestStub * total);
  }

  /** {@code ΣG·ΣL + ΣR·C}. */
  private double takenSeconds() {
    double siemens = 0;
    double metres = line.circuit().lengthMetres();
    double blocked = 0;
    for (int item = 0; item < farads.length; item++) {
      SegmentItem one = line.circuit().items().get(item);
      RingingLine.Branch branch = line.branches().get(item);
      siemens += PulseEnergy.siemens(one);
      metres += branch.stubMetres();
      Terminator terminator = one.terminator();
      blocked += terminator == null ? 0 : terminator.resistorOhms() * branch.terminatorFarads();
    }
    return siemens * metres * line.henriesPerMetre() + blocked;
  }

  /**
   * What a step means for one side of its sender.
   *
   * @param electric what the capacitances will hold, in joules
   * @param magnetic what the inductances will hold
   * @param taken what its end takes until the front is there
   * @param amperes into it in the end
   */
  private record Side(
      double electric, double magnetic, double taken, double amperes, double waitSeconds) {}

  /** One side of every sender, in one pass from the end. */
  private final class Sides {
    private final boolean reversed;
    private final double[] cold;
    private final double[] hot;
    private final double[] electric;
    private final double[] magnetic;
    private final double[] metres;
    private final double[] amperes;

    Sides(double[] cold, double[] hot, boolean reversed) {
      this.reversed = reversed;
      this.cold = cold;
      this.hot = hot;
      electric = new double[cold.length];
      magnetic = new double[cold.length];
      metres = new double[cold.length];
      amperes = new double[cold.length];
      for (int node = cold.length - 2; node >= 0; node--) {
        double hop = hop(node);
        double near = cold[node];
        double far = cold[node + 1];
        // Items that share their terminals share what goes on from them.
        amperes[node] =
            hop > 0 ? (near - far) / (hop * line.leastLoopOhmsPerMetre()) : amperes[node + 1];
        metres[node] = metres[node + 1] + hop;
        electric[node] =
            electric[node + 1]
                + farads[reversed ? cold.length - 2 - node : node + 1] * far * far / 2
                + hop * line.faradsPerMetre() * (near * near + near * far + far * far) / 6;
        magnetic[node] =
            magnetic[node + 1] + hop * line.henriesPerMetre() * amperes[node] * amperes[node] / 2;
      }
    }

    private double hop(int node) {
      List<Double> hops = line.circuit().hopLengthsMetres();
      return hops.get(reversed ? hops.size() - 1 - node : node);
    }

    /** Of a sender that gives one volt. */
    Side of(int sender) {
      int end = cold.length - 1;
      double share = 1 / cold[sender];
      double at = hot[end] / hot[sender];
      double wait = metres[sender] / line.metresPerSecond();
      double taken = at * at * endSiemens() * wait;
      return new Side(
          electric[sender] * share * share,
          magnetic[sender] * share * share,
          taken,
          amperes[sender] * share,
          taken > 0 ? wait : 0);
    }

    private double endSiemens() {
      List<SegmentItem> items = line.circuit().items();
      return items.get(reversed ? 0 : items.size() - 1).steadyTerminatorSiemens();
    }
  }
}
