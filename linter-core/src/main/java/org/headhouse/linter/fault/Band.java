package org.headhouse.linter.fault;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Readings of one measurement that lead the same way, and all states that can give one of them.
 *
 * <p>What each state can show is an interval. The largest sets of intervals with a point in common
 * are in one order along the line (P. C. Gilmore, A. J. Hoffman, A characterization of
 * comparability graphs and of interval graphs, 1964), and between two of them first some intervals
 * end, then others begin: any cut between leaves every state on each side where it can be.
 *
 * @param limits where the readings are
 * @param states those that can give one of them
 */
record Band(Span limits, List<Hypothesis> states) {
  private static final String SOUND = "as written";
  private static final int MOST_DIGITS = 8;

  /** The bands of one measurement from the lowest readings to the highest. */
  static List<Band> of(List<Hypothesis> states, Measurement measurement) {
    Sweep sweep = new Sweep(states, measurement);
    List<Band> bands = new ArrayList<>();
    double from = Double.NEGATIVE_INFINITY;
    while (sweep.next()) {
      double to = sweep.cut();
      bands.add(new Band(new Span(from, to), sweep.states()));
      from = to;
    }
    return bands;
  }

  /**
   * How many faults are left.
   *
   * @param most in the largest band; all of them where the measurement tells none apart
   * @param sum over all bands, each fault counted once in each
   */
  record Left(int most, int sum) {}

  /** How many faults a measurement leaves. */
  static Left left(List<Hypothesis> states, Measurement measurement) {
    Sweep sweep = new Sweep(states, measurement);
    int most = 0;
    int sum = 0;
    while (sweep.next()) {
      most = Math.max(most, sweep.faults());
      sum += sweep.faults();
    }
    return new Left(most, sum);
  }

  /** How many faults some states are of, the sound line counted as one. */
  static int faults(List<Hypothesis> states) {
    Set<Object> faults = new HashSet<>();
    states.forEach(one -> faults.add(key(one)));
    return faults.size();
  }

  private static Object key(Hypothesis state) {
    return state.fault() == null ? SOUND : state.fault();
  }

  /** Of the numbers between two that with the fewest digits; in the middle where that is none. */
  static double roundest(double one, double other) {
    double low = Math.min(one, other);
    double high = Math.max(one, other);
    double step = Math.pow(10, Math.ceil(Math.log10(Math.max(Math.abs(low), Math.abs(high)))));
    for (int digits = 0; digits < MOST_DIGITS; digits++) {
      double middle = Math.rint((low + high) / 2 / step) * step;
      if (middle > low && middle < high) {
        return middle;
      }
      step /= 10;
    }
    return (low + high) / 2;
  }

  /** Goes from one largest set to the next. */
  private static final class Sweep {
    private final List<Hypothesis> all;
    private final Span[] spans;
    private final Integer[] byLow;
    private final Integer[] byHigh;
    private final Map<Object, Integer> looks = new HashMap<>();
    private int begun;
    private int ended;

    Sweep(List<Hypothesis> states, Measurement measurement) {
      all = states;
      spans = new Span[states.size()];
      byLow = new Integer[spans.length];
      byHigh = new Integer[spans.length];
      for (int i = 0; i < spans.length; i++) {
        spans[i] = states.get(i).shown(measurement);
        byLow[i] = i;
        byHigh[i] = i;
      }
      Arrays.sort(byLow, Comparator.comparingDouble(i -> spans[i].low()));
      Arrays.sort(byHigh, Comparator.comparingDouble(i -> spans[i].high()));
    }

    /** Up to where the next interval ends, before which all have begun that can. */
    boolean next() {
      if (begun == spans.length) {
        return false;
      }
      while (high(ended) < low(begun)) {
        looks.merge(key(all.get(byHigh[ended])), -1, (a, b) -> a + b == 0 ? null : a + b);
        ended++;
      }
      while (begun < spans.length && low(begun) <= high(ended)) {
        looks.merge(key(all.get(byLow[begun])), 1, Integer::sum);
        begun++;
      }
      return true;
    }

    int faults() {
      return looks.size();
    }

    List<Hypothesis> states() {
      double at = low(begun - 1);
      List<Hypothesis> here = new ArrayList<>();
      for (int i = 0; i < spans.length; i++) {
        if (spans[i].low() <= at && at <= spans[i].high()) {
          here.add(all.get(i));
        }
      }
      return here;
    }

    /** The roundest number that is between this set and the next. */
    double cut() {
      if (begun == spans.length) {
        return Double.POSITIVE_INFINITY;
      }
      int last = ended;
      while (last + 1 < spans.length && high(last + 1) < low(begun)) {
        last++;
      }
      return roundest(high(last), low(begun));
    }

    private double low(int at) {
      return spans[byLow[at]].low();
    }

    private double high(int at) {
      return spans[byHigh[at]].high();
    }
  }
}
