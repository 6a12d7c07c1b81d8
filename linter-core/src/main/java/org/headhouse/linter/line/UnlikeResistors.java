package org.headhouse.linter.line;

import java.util.Arrays;
import java.util.List;

/**
 * What the two resistors of a bias can do to the pair if they are not alike, beyond what alike ones
 * do.
 *
 * <p>A bias drives {@code (Vs − a)/R1 + b/R0} into the difference, with D1 at a and D0 at b. As
 * long as {@code a < Vs} both are positive, and the least of it is that of two greatest resistors,
 * the most that of two least. A weak pull to a low supply may have D1 over it, because a bias of
 * another supply holds it there; then unlike resistors take up to {@code (1/R_least − 1/R_greatest)
 * · (a − Vs)} more, or give so much more.
 *
 * <p>How high D1 can be follows from {@code a = (s + d)/2} with the most of the sum {@code s} and
 * of the difference {@code d}. Into the sum a bias drives {@code Vs/R1 − (1/R1 + 1/R0)·s/2 − (1/R1
 * − 1/R0)·d/2}; for resistors within ± t that is no more than {@code ((1 + t)·Vs − s)/R}, and what
 * a driver adds that holds d under zero.
 */
final class UnlikeResistors {
  private final SegmentSpread spread;
  private final CornerPart terminators;
  private final double drivenVolts;

  private UnlikeResistors(SegmentSpread spread, CornerPart terminators, double drivenVolts) {
    this.spread = spread;
    this.terminators = terminators;
    this.drivenVolts = drivenVolts;
  }

  /** The current that must be granted at each item of an idle segment. */
  static double[] idleAmperes(SegmentSpread spread) {
    if (!hasSeveral(spread)) {
      return new double[spread.circuit().items().size()];
    }
    CornerPart terminators = new SpreadParts(spread).steadyTerminators();
    return new UnlikeResistors(spread, terminators, 0).amperes();
  }

  /** The same while a driver is on. */
  static double[] drivenAmperes(SegmentSpread spread) {
    if (!hasSeveral(spread)) {
      return new double[spread.circuit().items().size()];
    }
    CornerPart terminators = new SpreadParts(spread).signalTerminators();
    return new UnlikeResistors(spread, terminators, Levels.DRIVER_VOLTS).amperes();
  }

  /** With one bias D1 is nowhere above its supply, so there is nothing to grant. */
  private static boolean hasSeveral(SegmentSpread spread) {
    return spread.circuit().biases() > 1;
  }

  /** Nothing but where supplies differ much, or several biases meet no terminator. */
  private double[] amperes() {
    List<SegmentItem> items = spread.circuit().items();
    double[] mostD1 = new double[items.size()];
    CornerPart bias = new SpreadParts(spread).bias(1 + spread.tolerances().supply());
    double mostSupply = 0;
    for (double volts : bias.volts()) {
      mostSupply = Math.max(mostSupply, volts);
    }
    Arrays.fill(mostD1, mostSupply);
    CornerNetwork difference = IdleCorners.highestTurned(spread, terminators, amperes(mostD1));
    CornerNetwork sum = sumTurned();
    for (int item = 0; item < mostD1.length; item++) {
      if (items.get(item).bias() != null) {
        double most = -(sum.leastVolts(item) + difference.leastVolts(item)) / 2;
        mostD1[item] = Math.min(most, mostSupply);
      }
    }
    return amperes(mostD1);
  }

  /** The network of the sum, its sign turned, so that its least is the most. */
  private CornerNetwork sumTurned() {
    SpreadParts parts = new SpreadParts(spread);
    List<SegmentItem> items = spread.circuit().items();
    CornerPart bias = parts.bias(-(1 + spread.tolerances().supply()));
    double[] volts = bias.volts().clone();
    double[] driven = new double[volts.length];
    for (int item = 0; item < volts.length; item++) {
      BiasResistors resistors = items.get(item).bias();
      if (resistors != null) {
        volts[item] *= 1 + spread.tolerances().of(resistors);
        driven[item] = spreadSiemens(bias, item) * drivenVolts / 2;
      }
    }
    return new CornerNetwork(
        List.of(parts.loads(), new CornerPart(bias.leastSiemens(), bias.greatestSiemens(), volts)),
        driven,
        spread.leastHopOhms(),
        spread.greatestHopOhms(),
        null);
  }

  private double[] amperes(double[] mostD1) {
    CornerPart bias = new SpreadParts(spread).bias(1 - spread.tolerances().supply());
    double[] amperes = new double[mostD1.length];
    for (int item = 0; item < amperes.length; item++) {
      amperes[item] = spreadSiemens(bias, item) * Math.max(0, mostD1[item] - bias.volts()[item]);
    }
    return amperes;
  }

  private static double spreadSiemens(CornerPart part, int item) {
    return part.greatestSiemens()[item] - part.leastSiemens()[item];
  }
}
