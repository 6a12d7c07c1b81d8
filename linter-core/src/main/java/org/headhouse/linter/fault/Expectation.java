package org.headhouse.linter.fault;

import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.IntFunction;
import org.headhouse.linter.fault.Measurement.Quantity;

/** What can be measured on one segment, each range computed when it is first asked for. */
final class Expectation {
  /** A wire that shorts the far end, with its clips (common practice, no source). */
  private static final Span SHORTING_WIRE = new Span(1 / 0.1, 1e9);

  /**
   * What an idle pair without bias may show to either side as long as a resistor joins its
   * conductors (common practice, no source).
   */
  private static final Span UNHELD_VOLTS = new Span(-0.05, 0.05);

  /** A pair that is joined by more than this floats, and may show anything. */
  private static final double FLOATING_OHMS = 10_000;

  /**
   * From here on a pair is open: damp and dust conduct as much, and meters show all sorts of things
   * (common practice, no source).
   */
  private static final double OPEN_OHMS = 100_000;

  private final FaultyPair pair;

  /** The least and the most for each item, one after the other, by quantity. */
  private final Map<Quantity, double[]> known = new EnumMap<>(Quantity.class);

  Expectation(FaultyPair pair) {
    this.pair = pair;
  }

  /** What there is to measure, without the error of a meter. */
  Span of(Measurement measurement) {
    double[] ends = ends(measurement.quantity());
    int item = measurement.item();
    return new Span(ends[2 * item], ends[2 * item + 1]);
  }

  private double[] ends(Quantity quantity) {
    double[] ends = known.get(quantity);
    if (ends == null) {
      compute(quantity);
      ends = Objects.requireNonNull(known.get(quantity));
    }
    return ends;
  }

  /** One walk along the segment gives several quantities. */
  private void compute(Quantity quantity) {
    switch (quantity) {
      case PAIR_RESISTANCE, RESISTANCE_TOWARD_HEAD, RESISTANCE_TOWARD_END -> {
        PairOhms ohms = PairOhms.of(pair);
        keep(Quantity.PAIR_RESISTANCE, ohms::at);
        keep(Quantity.RESISTANCE_TOWARD_HEAD, item -> ohms.opened(item, false));
        keep(Quantity.RESISTANCE_TOWARD_END, item -> ohms.opened(item, true));
      }
      case LOOP_RESISTANCE -> keep(quantity, loop());
      case IDLE_VOLTAGE -> {
        if (pair.isSymmetric()) {
          AlikeIdle alike = new AlikeIdle(pair);
          keepDifference(item -> alike.isDriven(item) ? alike.difference(item) : unheld(item));
        } else {
          split();
        }
      }
      case D1_VOLTAGE, D0_VOLTAGE -> split();
    }
  }

  private void keep(Quantity quantity, IntFunction<Span> spans) {
    double[] ends = new double[2 * pair.nodes.length];
    for (int item = 0; item < pair.nodes.length; item++) {
      Span span = spans.apply(item);
      ends[2 * item] = quantity.isResistance() ? Math.min(span.low(), OPEN_OHMS) : span.low();
      ends[2 * item + 1] = span.high();
    }
    known.put(quantity, ends);
  }

  /** As it is at the terminals of each item. */
  private void keepDifference(IntFunction<Span> held) {
    keep(
        Quantity.IDLE_VOLTAGE,
        item -> pair.turned[item] ? held.apply(item).negated() : held.apply(item));
  }

  private void split() {
    SplitIdle split = new SplitIdle(pair);
    keep(Quantity.D1_VOLTAGE, level(split, true));
    keep(Quantity.D0_VOLTAGE, level(split, false));
    if (!pair.isSymmetric()) {
      keepDifference(item -> split.isDriven(item) ? split.difference(item) : unheld(item));
    }
  }

  /** The far end is the last item, and seen from there the first. */
  private IntFunction<Span> loop() {
    int last = pair.nodes.length - 1;
    PairOhms toEnd = PairOhms.shorted(pair, last, SHORTING_WIRE);
    PairOhms toStart = PairOhms.shorted(pair, 0, SHORTING_WIRE);
    return item -> (item < last ? toEnd : toStart).at(item);
  }

  private Span unheld(int item) {
    return of(new Measurement(Quantity.PAIR_RESISTANCE, item)).high() > FLOATING_OHMS
        ? Span.ANY
        : UNHELD_VOLTS;
  }

  private IntFunction<Span> level(SplitIdle split, boolean d1) {
    return item ->
        pair.commonFloats || !split.isDriven(item)
            ? Span.ANY
            : pair.turned[item] == d1 ? split.d0(item) : split.d1(item);
  }
}
