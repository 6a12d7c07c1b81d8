package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The voltages of D1 and D0 against common while nobody sends, as ranges, O(n) for all items and
 * each bias.
 *
 * <p>The two conductors are kept apart, and so are the two inputs of each receiver, so that nothing
 * has to be alike: a {@link Mesh} is walked from both ends to the item. What several biases make is
 * the sum of what each makes alone, the supplies of the others at common (superposition).
 */
final class SplitIdle {
  private final FaultyPair pair;
  private final List<Walk> walks = new ArrayList<>();

  SplitIdle(FaultyPair pair) {
    this.pair = pair;
    for (int at = 0; at < pair.sources.size(); at++) {
      if (pair.sources.get(at).isPowered()) {
        walks.add(new Walk(pair, at));
      }
    }
  }

  /** Whether some bias reaches an item. */
  boolean isDriven(int item) {
    return walks.stream().anyMatch(walk -> walk.whole(pair.nodes[item]).isDriven());
  }

  Span d1(int item) {
    return sum(item, Mesh::d1);
  }

  Span d0(int item) {
    return sum(item, Mesh::d0);
  }

  /** D1 − D0. */
  Span difference(int item) {
    return sum(item, Mesh::difference);
  }

  private interface Share {
    @Nullable Span of(Mesh mesh);
  }

  private Span sum(int item, Share share) {
    Span sum = Span.ZERO;
    for (Walk walk : walks) {
      Span one = share.of(walk.whole(pair.nodes[item]));
      if (one == null) {
        return Span.ANY;
      }
      sum = sum.plus(one.times(walk.source.supplyVolts()));
    }
    return sum;
  }

  /** All that is seen from each node, with one supply kept. */
  private static final class Walk {
    private final BiasSource source;
    private final Mesh[] whole;

    Walk(FaultyPair pair, int kept) {
      source = pair.sources.get(kept);
      int size = pair.size();
      Mesh[] here = here(pair, kept);
      whole = new Mesh[size];
      Mesh after = Mesh.NOTHING;
      for (int node = size - 1; node >= 0; node--) {
        whole[node] = after.plus(here[node]);
        if (node > 0) {
          after = through(pair, node - 1, whole[node]);
        }
      }
      Mesh before = Mesh.NOTHING;
      for (int node = 1; node < size; node++) {
        before = through(pair, node - 1, before.plus(here[node - 1]));
        whole[node] = whole[node].plus(before);
      }
    }

    private static Mesh[] here(FaultyPair pair, int kept) {
      Mesh[] here = new Mesh[pair.size()];
      for (int node = 0; node < here.length; node++) {
        Span load = new Span(0, pair.mostLoad[node]);
        here[node] = Mesh.of(pair.across[node], load, load, Span.ZERO, Span.ZERO);
      }
      for (int at = 0; at < pair.sources.size(); at++) {
        BiasSource source = pair.sources.get(at);
        here[source.node()] = here[source.node()].plus(mesh(source, at == kept));
      }
      return here;
    }

    private static Mesh mesh(BiasSource source, boolean kept) {
      if (!kept) {
        return Mesh.of(Span.ZERO, source.toD1(), source.toD0(), Span.ZERO, Span.ZERO);
      }
      return source.reversed()
          ? Mesh.of(Span.ZERO, source.toCommon(), Span.ZERO, Span.ZERO, source.toSupply())
          : Mesh.of(Span.ZERO, Span.ZERO, source.toCommon(), source.toSupply(), Span.ZERO);
    }

    private static Mesh through(FaultyPair pair, int hop, Mesh seen) {
      return seen.through(
          pair.leastHopOhms[hop], pair.mostHopOhms[hop], pair.openD1[hop], pair.openD0[hop]);
    }

    Mesh whole(int node) {
      return whole[node];
    }
  }
}
