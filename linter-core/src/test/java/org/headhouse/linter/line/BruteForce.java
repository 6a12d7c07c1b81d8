package org.headhouse.linter.line;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiConsumer;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Every corner of what the parts of a segment may have: each of them at its least and at its
 * greatest, in all combinations, with the full matrix of each. It knows nothing of directions.
 */
final class BruteForce {
  private final SegmentSpread spread;
  private final boolean unlike;
  private final List<BiConsumer<Deviations, Boolean>> knobs = new ArrayList<>();

  /** What one corner makes of the parts, as shares of what is written, and ohms a metre. */
  private static final class Deviations {
    private final double[] terminators;
    private final double[] supplies;
    private final double[] pullUps;
    private final double[] pullDowns;
    private final double[] ohmsPerMetre;

    Deviations(int items) {
      terminators = new double[items];
      supplies = new double[items];
      pullUps = new double[items];
      pullDowns = new double[items];
      ohmsPerMetre = new double[items];
    }
  }

  /**
   * @param unlike whether the two resistors of a bias differ from their value each on its own
   */
  BruteForce(SegmentSpread spread, boolean unlike) {
    this.spread = spread;
    this.unlike = unlike;
    List<SegmentItem> items = spread.circuit().items();
    for (int at = 0; at < items.size(); at++) {
      addKnobs(items.get(at), at);
    }
    for (int at = 0; at < items.size() - 1; at++) {
      int hop = at;
      knobs.add(
          (deviations, high) ->
              deviations.ohmsPerMetre[hop] =
                  high
                      ? spread.cable().greatestOhmsPerMetre()
                      : spread.cable().leastOhmsPerMetre());
    }
  }

  private void addKnobs(SegmentItem item, int at) {
    Tolerances tolerances = spread.tolerances();
    if (item.terminator() != null) {
      knobs.add((to, high) -> to.terminators[at] = off(tolerances.terminators(), high));
    }
    BiasResistors bias = item.bias();
    if (bias != null) {
      Double own = bias.tolerance();
      double resistors = own == null ? tolerances.resistors() : own;
      knobs.add((to, high) -> to.supplies[at] = off(tolerances.supply(), high));
      if (unlike) {
        knobs.add((to, high) -> to.pullUps[at] = off(resistors, high));
        knobs.add((to, high) -> to.pullDowns[at] = off(resistors, high));
      } else {
        knobs.add((to, high) -> to.pullUps[at] = to.pullDowns[at] = off(resistors, high));
      }
    }
  }

  private static double off(double tolerance, boolean high) {
    return high ? 1 + tolerance : 1 - tolerance;
  }

  /** How many parts can be at one of two values. */
  int parts() {
    return knobs.size();
  }

  /** The network of every corner, with loads and bias. */
  Stream<NodalAnalysis> corners(boolean capacitorsConduct) {
    return corners(
        (circuit, pullDownShare) ->
            NodalAnalysis.loaded(circuit, capacitorsConduct, pullDownShare));
  }

  /** Cable and terminators of every corner. */
  Stream<NodalAnalysis> terminatorsOnly() {
    return corners((circuit, pullDownShare) -> NodalAnalysis.terminatorsOnly(circuit));
  }

  /** The segment of every corner, of bias resistors that are alike. */
  Stream<SegmentCircuit> circuits() {
    return corners((circuit, pullDownShare) -> circuit);
  }

  private <T> Stream<T> corners(BiFunction<SegmentCircuit, double[], T> made) {
    return IntStream.range(0, 1 << knobs.size()).mapToObj(corner -> corner(corner, made));
  }

  private <T> T corner(int corner, BiFunction<SegmentCircuit, double[], T> made) {
    List<SegmentItem> items = spread.circuit().items();
    Deviations to = new Deviations(items.size());
    for (int knob = 0; knob < knobs.size(); knob++) {
      knobs.get(knob).accept(to, (corner >> knob & 1) == 1);
    }
    List<SegmentItem> changed = new ArrayList<>();
    List<Double> hopOhms = new ArrayList<>();
    double[] pullDownShare = new double[items.size()];
    for (int at = 0; at < items.size(); at++) {
      changed.add(changed(items.get(at), to, at));
      pullDownShare[at] = to.pullDowns[at] / to.pullUps[at];
      if (at < items.size() - 1) {
        hopOhms.add(spread.circuit().hopLengthsMetres().get(at) * to.ohmsPerMetre[at]);
      }
    }
    return made.apply(new SegmentCircuit(changed, hopOhms, 1), pullDownShare);
  }

  private static SegmentItem changed(SegmentItem item, Deviations to, int at) {
    Terminator terminator = item.terminator();
    BiasResistors bias = item.bias();
    return new SegmentItem(
        item.name(),
        item.unitLoads(),
        terminator == null
            ? null
            : new Terminator(
                terminator.resistorOhms() * to.terminators[at], terminator.capacitorInSeries()),
        bias == null
            ? null
            : new BiasResistors(
                bias.eachOhms() * to.pullUps[at], bias.supplyVolts() * to.supplies[at]));
  }

  /** The least of each item over corners. */
  static double[] least(Stream<double[]> corners) {
    return corners
        .reduce(
            (one, other) ->
                IntStream.range(0, one.length)
                    .mapToDouble(item -> Math.min(one[item], other[item]))
                    .toArray())
        .orElseThrow();
  }

  /** The greatest of each item over corners. */
  static double[] greatest(Stream<double[]> corners) {
    double[] turned = least(corners.map(BruteForce::turned));
    return turned(turned);
  }

  private static double[] turned(double[] values) {
    return Arrays.stream(values).map(value -> -value).toArray();
  }
}
