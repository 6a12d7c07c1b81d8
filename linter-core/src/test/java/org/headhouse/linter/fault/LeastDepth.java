package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Objects;
import org.headhouse.linter.fault.Measurement.Quantity;

/**
 * How many measurements no plan can do without. On the way of one state, with a reading in the
 * middle of what it can show each time, every state that can be told from it has to be excluded by
 * some reading: the least cover of those states by measurements, found by a search.
 */
final class LeastDepth {
  private final List<Hypothesis> states;
  private final List<Measurement> measurements = new ArrayList<>();

  private LeastDepth(SegmentFaults segment) {
    states = new ArrayList<>(segment.hypotheses(List.of()));
    states.add(segment.sound());
    for (int item = 0; item < segment.items(); item++) {
      for (Quantity quantity : Quantity.values()) {
        measurements.add(new Measurement(quantity, item));
      }
    }
  }

  static int of(SegmentFaults segment) {
    LeastDepth search = new LeastDepth(segment);
    return search.states.stream().mapToInt(search::of).max().orElse(0);
  }

  private int of(Hypothesis state) {
    BitSet toldApart = new BitSet();
    List<BitSet> excluded = new ArrayList<>();
    for (Measurement measurement : measurements) {
      Span own = state.shown(measurement);
      double reading = middle(own);
      BitSet here = new BitSet();
      for (int at = 0; at < states.size(); at++) {
        Span shown = states.get(at).shown(measurement);
        if (!Objects.equals(states.get(at).fault(), state.fault()) && !shown.meets(own)) {
          toldApart.set(at);
        }
        here.set(at, reading < shown.low() || reading > shown.high());
      }
      excluded.add(here);
    }
    int size = 0;
    while (!isCovered(toldApart, excluded, size)) {
      size++;
    }
    return size;
  }

  private static double middle(Span span) {
    if (Double.isInfinite(span.low())) {
      return Double.isInfinite(span.high()) ? 0 : span.high();
    }
    return Double.isInfinite(span.high()) ? 2 * span.low() : (span.low() + span.high()) / 2;
  }

  /** What the fewest measurements exclude is tried first. */
  private static boolean isCovered(BitSet open, List<BitSet> sets, int size) {
    if (open.isEmpty() || size == 0) {
      return open.isEmpty();
    }
    int rarest = -1;
    long fewest = Long.MAX_VALUE;
    for (int at = open.nextSetBit(0); at >= 0; at = open.nextSetBit(at + 1)) {
      int one = at;
      long having = sets.stream().filter(set -> set.get(one)).count();
      if (having < fewest) {
        fewest = having;
        rarest = at;
      }
    }
    for (BitSet set : sets) {
      if (set.get(rarest)) {
        BitSet rest = (BitSet) open.clone();
        rest.andNot(set);
        if (isCovered(rest, sets, size - 1)) {
          return true;
        }
      }
    }
    return false;
  }
}
