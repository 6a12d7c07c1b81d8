package org.headhouse.linter.fault;

/**
 * D1 − D0 while nobody sends, where D1 and D0 are alike everywhere: as a range, O(n) for all items
 * and each bias.
 *
 * <p>The difference is then a ladder by itself ({@code DifferentialNetwork} of the package {@code
 * line}). With one bias every node has a voltage of its sign, and current flows away from it: the
 * least at a node is that of all other parts at their most conductance, of the resistors and the
 * supply of the bias at their weakest, of the cable between bias and node at its most and of all
 * other cable at its least (the signs of the derivatives are in {@code CornerNetwork} of {@code
 * line}). The most is the opposite corner. What several biases make is the sum of what each makes
 * alone; each of these is exact, their sum may be wider than the truth, and never shorter.
 *
 * <p>What is not quite alike is granted on top: {@code (g1 − g0)·s/2} is the current that two
 * conductances to common put into the difference, with {@code s/2} the middle of D1 and D0, and
 * what it makes at a node is at most what it would make if it entered there.
 */
final class AlikeIdle {
  /**
   * By how much the two inputs of one receiver may differ, as a share of the most that they take
   * (common practice, no source).
   */
  static final double UNLIKE_INPUTS = 0.2;

  private static final int NONE = -1;

  private final FaultyPair pair;
  private final double[] low;
  private final double[] high;
  private final boolean[] driven;

  AlikeIdle(FaultyPair pair) {
    this.pair = pair;
    int size = pair.size();
    low = new double[size];
    high = new double[size];
    driven = new boolean[size];
    double mostVolts = 0;
    double unlikeShare = 0;
    int powered = 0;
    for (int at = 0; at < pair.sources.size(); at++) {
      BiasSource source = pair.sources.get(at);
      if (source.isPowered()) {
        add(at);
        mostVolts = Math.max(mostVolts, source.supplyVolts().high());
        unlikeShare = Math.max(unlikeShare, source.unlikeSiemens() / source.toSupply().high());
        powered++;
      }
    }
    if (powered > 0) {
      double mostMiddle = mostVolts * (1 + unlikeShare) / 2;
      grant(unlikeSiemens(pair.sources.size() > 1) * mostMiddle);
    }
  }

  boolean isDriven(int item) {
    return driven[pair.nodes[item]];
  }

  Span difference(int item) {
    int node = pair.nodes[item];
    return new Span(low[node], high[node]);
  }

  private void add(int at) {
    BiasSource source = pair.sources.get(at);
    double[] weakest = volts(at, false);
    double[] strongest = volts(at, true);
    for (int node = 0; node < low.length; node++) {
      low[node] += source.reversed() ? -strongest[node] : weakest[node];
      high[node] += source.reversed() ? -weakest[node] : strongest[node];
      driven[node] |= strongest[node] > 0;
    }
  }

  private double unlikeSiemens(boolean several) {
    double sum = 0;
    for (double load : pair.mostLoad) {
      sum += UNLIKE_INPUTS * load;
    }
    if (several) {
      for (BiasSource source : pair.sources) {
        sum += source.unlikeSiemens();
      }
    }
    return sum;
  }

  private void grant(double amperes) {
    double[] shunts = shunts(NONE, true);
    double[] siemens = siemens(shunts, seen(shunts, true), seenBack(shunts, true));
    for (int node = 0; node < low.length; node++) {
      if (driven[node]) {
        double volts = amperes / siemens[node];
        low[node] -= volts;
        high[node] += volts;
      }
    }
  }

  private static double[] siemens(double[] shunts, double[] before, double[] after) {
    double[] siemens = shunts.clone();
    for (int node = 0; node < siemens.length; node++) {
      siemens[node] += before[node] + after[node];
    }
    return siemens;
  }

  /** The voltage of every node at its own corner. */
  private double[] volts(int of, boolean strongest) {
    BiasSource source = pair.sources.get(of);
    double[] shunts = shunts(of, strongest);
    double[] before = seen(shunts, strongest);
    double[] after = seenBack(shunts, strongest);
    double own = strongest ? source.toSupply().high() : source.toSupply().low();
    double amperes = own * (strongest ? source.supplyVolts().high() : source.supplyVolts().low());
    double[] volts = new double[shunts.length];
    int at = source.node();
    volts[at] = amperes / (own + shunts[at] + before[at] + after[at]);
    double siemens = own + shunts[at] + before[at];
    double onward = amperes;
    for (int node = at + 1; node < volts.length; node++) {
      double share = 1 / (1 + product(between(node - 1, strongest), siemens));
      siemens = siemens * share + shunts[node];
      onward *= share;
      volts[node] = onward == 0 ? 0 : onward / (siemens + after[node]);
    }
    siemens = own + shunts[at] + after[at];
    onward = amperes;
    for (int node = at - 1; node >= 0; node--) {
      double share = 1 / (1 + product(between(node, strongest), siemens));
      siemens = siemens * share + shunts[node];
      onward *= share;
      volts[node] = onward == 0 ? 0 : onward / (siemens + before[node]);
    }
    return volts;
  }

  private static double product(double ohms, double siemens) {
    return siemens == 0 ? 0 : ohms * siemens;
  }

  /** Cable between bias and node. */
  private double between(int hop, boolean strongest) {
    return strongest ? pair.leastOhms(hop, true) : pair.mostOhms(hop, true);
  }

  /** All other cable. */
  private double beyond(int hop, boolean strongest) {
    return strongest ? pair.mostOhms(hop, true) : pair.leastOhms(hop, true);
  }

  /** What each node has, without one bias, by its index: at its least for the strongest voltage. */
  private double[] shunts(int without, boolean least) {
    double[] shunts = new double[low.length];
    for (int node = 0; node < shunts.length; node++) {
      Span across = pair.across[node];
      shunts[node] = 2 * (least ? across.low() : across.high()) + (least ? 0 : pair.mostLoad[node]);
    }
    for (int at = 0; at < pair.sources.size(); at++) {
      if (at != without) {
        BiasSource source = pair.sources.get(at);
        shunts[source.node()] += least ? source.toSupply().low() : source.toSupply().high();
      }
    }
    return shunts;
  }

  /** What each node sees before it, its own part not counted. */
  private double[] seen(double[] shunts, boolean strongest) {
    double[] seen = new double[shunts.length];
    for (int node = 1; node < seen.length; node++) {
      seen[node] = through(beyond(node - 1, strongest), seen[node - 1] + shunts[node - 1]);
    }
    return seen;
  }

  private double[] seenBack(double[] shunts, boolean strongest) {
    double[] seen = new double[shunts.length];
    for (int node = seen.length - 2; node >= 0; node--) {
      seen[node] = through(beyond(node, strongest), seen[node + 1] + shunts[node + 1]);
    }
    return seen;
  }

  private static double through(double ohms, double siemens) {
    return Double.isInfinite(ohms) ? 0 : siemens / (1 + ohms * siemens);
  }
}
