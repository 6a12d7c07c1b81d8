package org.headhouse.linter.fault;

/**
 * What an ohmmeter finds between D1 and D0 with all supplies off, O(n) for all items.
 *
 * <p>No resistance seen anywhere in a network of resistors falls when one of them is raised
 * (Rayleigh; P. G. Doyle, J. L. Snell, Random Walks and Electric Networks, 1984, §1.4). So the
 * least is that of all parts at their least, the loads and the bias returned to common, and the
 * most is that of all at their most, without loads and bias. Each is computed exactly.
 */
final class PairOhms {
  private final Corner least;
  private final Corner most;
  private final int[] nodes;

  private PairOhms(Corner least, Corner most, int[] nodes) {
    this.least = least;
    this.most = most;
    this.nodes = nodes;
  }

  /** Of the pair as it is. */
  static PairOhms of(FaultyPair pair) {
    return of(pair, pair.across);
  }

  /**
   * With the terminators taken off that people know of, and the pair shorted at an item.
   *
   * @param siemens of the wire that shorts it
   */
  static PairOhms shorted(FaultyPair pair, int item, Span siemens) {
    Span[] across = pair.acrossWithoutTerminators.clone();
    int node = pair.nodes[item];
    across[node] = across[node].plus(siemens);
    return of(pair, across);
  }

  private static PairOhms of(FaultyPair pair, Span[] across) {
    return new PairOhms(
        new Corner(pair, across, true), new Corner(pair, across, false), pair.nodes);
  }

  Span at(int item) {
    int node = nodes[item];
    return new Span(least.whole(node).ohms(), most.whole(node).ohms());
  }

  /**
   * With the chain opened at an item, towards one side of it. Whether what is connected at the item
   * itself stays on that side is left open.
   */
  Span opened(int item, boolean towardEnd) {
    int node = nodes[item];
    Delta nearest = towardEnd ? least.after[node] : least.before[node];
    Delta farthest = towardEnd ? most.after[node] : most.before[node];
    return new Span(nearest.plus(least.here[node]).ohms(), farthest.ohms());
  }

  /** The whole segment with all its parts at one end of what they may have. */
  private static final class Corner {
    private final Delta[] here;
    private final Delta[] before;
    private final Delta[] after;

    Corner(FaultyPair pair, Span[] across, boolean mostSiemens) {
      int size = pair.size();
      here = new Delta[size];
      before = new Delta[size];
      after = new Delta[size];
      for (int node = 0; node < size; node++) {
        here[node] =
            mostSiemens
                ? new Delta(across[node].high(), pair.mostLoad[node], pair.mostLoad[node])
                : new Delta(across[node].low(), 0, 0);
      }
      if (mostSiemens) {
        for (BiasSource source : pair.sources) {
          int node = source.node();
          here[node] = here[node].plus(new Delta(0, source.toD1().high(), source.toD0().high()));
        }
      }
      before[0] = Delta.NOTHING;
      for (int node = 1; node < size; node++) {
        before[node] = through(pair, node - 1, before[node - 1].plus(here[node - 1]), mostSiemens);
      }
      after[size - 1] = Delta.NOTHING;
      for (int node = size - 2; node >= 0; node--) {
        after[node] = through(pair, node, after[node + 1].plus(here[node + 1]), mostSiemens);
      }
    }

    private static Delta through(FaultyPair pair, int hop, Delta seen, boolean leastOhms) {
      return leastOhms
          ? seen.through(pair.leastOhms(hop, true), pair.leastOhms(hop, false))
          : seen.through(pair.mostOhms(hop, true), pair.mostOhms(hop, false));
    }

    Delta whole(int node) {
      return before[node].plus(here[node]).plus(after[node]);
    }
  }
}
