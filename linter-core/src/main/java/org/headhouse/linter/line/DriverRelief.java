package org.headhouse.linter.line;

import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * What to change so that no driver works into less than {@link Levels#LEAST_DRIVER_LOAD_OHMS}.
 *
 * <p>No resistance seen anywhere falls when a resistor of the network is raised (Rayleigh), so each
 * change is found by bisection over its conductance, exact to 1e-12 of it and to the side on which
 * the load is enough.
 */
@Internal
public final class DriverRelief {
  private static final double PRECISION = 1e-12;

  private DriverRelief() {}

  /**
   * The least bias resistors with which every driver has its load, in place of those that are no
   * weak pulls.
   *
   * @return each of the two; what is fitted where that is enough; empty without such bias, and
   *     where even its removal is not enough
   */
  public static OptionalDouble leastBiasOhms(SegmentCircuit circuit) {
    double least = Double.POSITIVE_INFINITY;
    for (SegmentItem item : circuit.items()) {
      BiasResistors bias = item.bias();
      least = bias == null || bias.isWeak() ? least : Math.min(least, bias.eachOhms());
    }
    return resistance(
        most(1 / least, siemens -> circuit.withItems(item -> withBiasAtMost(item, siemens))));
  }

  /**
   * The least value of the terminators with which every driver has its load, in place of those that
   * have less.
   *
   * @return what the lowest one has where that is enough; empty without terminators, and where even
   *     their removal is not enough
   */
  public static OptionalDouble leastTerminatorOhms(SegmentCircuit circuit) {
    double greatest =
        circuit.items().stream().mapToDouble(SegmentItem::signalTerminatorSiemens).max().orElse(0);
    return resistance(
        most(greatest, siemens -> circuit.withItems(item -> withTerminatorAtMost(item, siemens))));
  }

  /**
   * The most unit loads of the segment with which every driver has its load, all items of it
   * lightened alike.
   *
   * @return what it has where that is enough; empty where even none is not enough
   */
  public static OptionalDouble mostUnitLoads(SegmentCircuit circuit) {
    OptionalDouble share =
        most(1, scale -> circuit.withItems(item -> item.withUnitLoads(item.unitLoads() * scale)));
    return share.isPresent() ? OptionalDouble.of(share.getAsDouble() * circuit.unitLoads()) : share;
  }

  /** A segment in which no terminator has less than some ohms. */
  public static SegmentCircuit withTerminatorsOf(SegmentCircuit circuit, double leastOhms) {
    Require.positive(leastOhms, "terminator");
    return circuit.withItems(item -> withTerminatorAtMost(item, 1 / leastOhms));
  }

  private static SegmentItem withBiasAtMost(SegmentItem item, double siemens) {
    BiasResistors bias = item.bias();
    return bias == null || bias.isWeak() || bias.siemens() <= siemens
        ? item
        : item.with(item.terminator(), siemens == 0 ? null : bias.withOhms(1 / siemens));
  }

  private static SegmentItem withTerminatorAtMost(SegmentItem item, double siemens) {
    @Nullable Terminator terminator = item.terminator();
    return terminator == null || terminator.signalSiemens() <= siemens
        ? item
        : item.with(
            siemens == 0 ? null : new Terminator(1 / siemens, terminator.capacitorInSeries()),
            item.bias());
  }

  /** The greatest value up to one that fits, where the less the better. */
  private static OptionalDouble most(double present, DoubleFunction<SegmentCircuit> changed) {
    if (fits(changed.apply(present))) {
      return OptionalDouble.of(present);
    }
    if (!fits(changed.apply(0))) {
      return OptionalDouble.empty();
    }
    double fitting = 0;
    double tooMuch = present;
    while (tooMuch - fitting > PRECISION * present) {
      double middle = (fitting + tooMuch) / 2;
      if (fits(changed.apply(middle))) {
        fitting = middle;
      } else {
        tooMuch = middle;
      }
    }
    return OptionalDouble.of(fitting);
  }

  private static boolean fits(SegmentCircuit circuit) {
    return DriverLoad.heaviest(circuit).ohms() >= Levels.LEAST_DRIVER_LOAD_OHMS;
  }

  /** Nothing that is fitted at all is no resistor. */
  private static OptionalDouble resistance(OptionalDouble siemens) {
    return siemens.isEmpty() || siemens.getAsDouble() == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(1 / siemens.getAsDouble());
  }
}
