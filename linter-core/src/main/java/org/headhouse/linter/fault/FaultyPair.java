package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.List;

/**
 * A segment with one thing wrong, as what may be at and between its nodes. Its nodes are the items
 * in the order of the chain, and one more for a fault inside a hop. Made by {@link FaultCatalogue}
 * from a copy of the sound one; not changed afterwards.
 */
final class FaultyPair {
  private static final double OPEN = Double.POSITIVE_INFINITY;

  /**
   * A short has up to this many ohms, a clamped wire or a wet joint (common practice, no source).
   */
  private static final Span SHORT_SIEMENS = new Span(1 / 5.0, 1e9);

  /** The node of each item. */
  final int[] nodes;

  /** What is across the pair at each node: terminators, shorts. */
  final Span[] across;

  /** The same once the terminators that people know of are taken off. */
  final Span[] acrossWithoutTerminators;

  /** From each conductor to common at each node, at most; at least nothing. */
  final double[] mostLoad;

  final double[] leastHopOhms;
  final double[] mostHopOhms;
  final boolean[] openD1;
  final boolean[] openD0;

  /** Whether the terminals of each item are turned against the pair. */
  final boolean[] turned;

  List<BiasSource> sources;

  /** Whether the common that a meter is held to may be at any voltage. */
  boolean commonFloats;

  FaultyPair(
      Span[] across, double[] mostLoad, double[] leastHopOhms, double[] mostHopOhms, int items) {
    this.nodes = new int[items];
    for (int item = 0; item < items; item++) {
      nodes[item] = item;
    }
    this.across = across;
    this.acrossWithoutTerminators = new Span[across.length];
    java.util.Arrays.fill(acrossWithoutTerminators, Span.ZERO);
    this.mostLoad = mostLoad;
    this.leastHopOhms = leastHopOhms;
    this.mostHopOhms = mostHopOhms;
    this.openD1 = new boolean[leastHopOhms.length];
    this.openD0 = new boolean[leastHopOhms.length];
    this.turned = new boolean[items];
    this.sources = List.of();
  }

  private FaultyPair(FaultyPair of) {
    this.nodes = of.nodes.clone();
    this.across = of.across.clone();
    this.acrossWithoutTerminators = of.acrossWithoutTerminators.clone();
    this.mostLoad = of.mostLoad;
    this.leastHopOhms = of.leastHopOhms;
    this.mostHopOhms = of.mostHopOhms;
    this.openD1 = of.openD1.clone();
    this.openD0 = of.openD0.clone();
    this.turned = of.turned.clone();
    this.sources = of.sources;
    this.commonFloats = of.commonFloats;
  }

  FaultyPair copy() {
    return new FaultyPair(this);
  }

  int size() {
    return across.length;
  }

  int hops() {
    return leastHopOhms.length;
  }

  double leastOhms(int hop, boolean d1) {
    return (d1 ? openD1 : openD0)[hop] ? OPEN : leastHopOhms[hop];
  }

  double mostOhms(int hop, boolean d1) {
    return (d1 ? openD1 : openD0)[hop] ? OPEN : mostHopOhms[hop];
  }

  FaultyPair withTerminator(int item, Span siemens) {
    FaultyPair changed = copy();
    changed.across[item] = siemens;
    return changed;
  }

  /** One that nobody knows of: it may stay where terminators are taken off. */
  FaultyPair withExtraTerminator(int item, Span siemens) {
    FaultyPair changed = copy();
    changed.across[item] = across[item].plus(siemens);
    changed.acrossWithoutTerminators[item] = siemens.fromZero();
    return changed;
  }

  FaultyPair open(int hop, boolean d1, boolean d0) {
    FaultyPair changed = copy();
    changed.openD1[hop] = d1;
    changed.openD0[hop] = d0;
    return changed;
  }

  FaultyPair shortedAt(int item) {
    FaultyPair changed = copy();
    changed.across[item] = across[item].plus(SHORT_SIEMENS);
    changed.acrossWithoutTerminators[item] = SHORT_SIEMENS;
    return changed;
  }

  /** Shorted anywhere between two items: one node more, and on both sides up to the whole hop. */
  FaultyPair shortedIn(int hop) {
    FaultyPair changed =
        new FaultyPair(
            inserted(across, hop + 1, SHORT_SIEMENS),
            inserted(mostLoad, hop + 1, 0),
            inserted(leastHopOhms, hop, 0),
            inserted(mostHopOhms, hop, mostHopOhms[hop]),
            nodes.length);
    changed.leastHopOhms[hop + 1] = 0;
    changed.acrossWithoutTerminators[hop + 1] = SHORT_SIEMENS;
    for (int item = hop + 1; item < nodes.length; item++) {
      changed.nodes[item] = item + 1;
    }
    List<BiasSource> moved = new ArrayList<>(sources.size());
    for (BiasSource source : sources) {
      moved.add(source.node() > hop ? source.movedTo(source.node() + 1) : source);
    }
    changed.sources = List.copyOf(moved);
    return changed;
  }

  private static Span[] inserted(Span[] values, int at, Span value) {
    Span[] longer = new Span[values.length + 1];
    System.arraycopy(values, 0, longer, 0, at);
    longer[at] = value;
    System.arraycopy(values, at, longer, at + 1, values.length - at);
    return longer;
  }

  private static double[] inserted(double[] values, int at, double value) {
    double[] longer = new double[values.length + 1];
    System.arraycopy(values, 0, longer, 0, at);
    longer[at] = value;
    System.arraycopy(values, at, longer, at + 1, values.length - at);
    return longer;
  }

  FaultyPair withSources(List<BiasSource> others) {
    FaultyPair changed = copy();
    changed.sources = List.copyOf(others);
    return changed;
  }

  /** The terminals of some items turned, and with them the bias that is connected there. */
  FaultyPair turned(int from, int to) {
    FaultyPair changed = copy();
    for (int item = from; item < to; item++) {
      changed.turned[item] = true;
    }
    List<BiasSource> others = new ArrayList<>(sources.size());
    for (BiasSource source : sources) {
      others.add(source.node() >= from && source.node() < to ? source.turned() : source);
    }
    changed.sources = List.copyOf(others);
    return changed;
  }

  FaultyPair withFloatingCommon() {
    FaultyPair changed = copy();
    changed.commonFloats = true;
    return changed;
  }

  /** Whether D1 and D0 are alike everywhere, so that their difference is a network by itself. */
  boolean isSymmetric() {
    for (int hop = 0; hop < openD1.length; hop++) {
      if (openD1[hop] != openD0[hop]) {
        return false;
      }
    }
    for (BiasSource source : sources) {
      if (!source.isSymmetric()) {
        return false;
      }
    }
    return true;
  }
}
