package org.headhouse.linter.line;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.headhouse.linter.stability.Internal;

/** Which bias resistors a segment needs. */
@Internal
public final class BiasSizing {
  private BiasSizing() {}

  /**
   * The largest bias resistors that still give every unit an idle voltage, as the only bias of the
   * segment, exactly and in O(n).
   *
   * <p>With {@code z[i]} the voltage of item i for one ampere into the differential network at the
   * bias, without bias there, and {@code z} that at the bias itself, {@code V[i] = Vs · z[i] / (R_B
   * + z)}. The unit with the least z[i] is the lowest whatever R_B is, so {@code R_B = Vs · z[i] /
   * V − z}. For no cable resistance this is the formula of TI SLLA272.
   *
   * @param at the index of the item that they are fitted at
   * @param supplyVolts the supply against common
   * @param wantedVolts the least D1 − D0 at any unit
   * @return infinite where nothing loads the pair, empty where no resistor is small enough, or the
   *     segment has no unit
   */
  public static OptionalDouble largestOhms(
      SegmentCircuit circuit, int at, double supplyVolts, double wantedVolts) {
    Require.positive(supplyVolts, "bias supply");
    Require.positive(wantedVolts, "wanted idle voltage");
    List<SegmentItem> items = circuit.items();
    double[] ohms = DifferentialNetwork.unbiasedWithOneAmpereAt(circuit, at).volts();
    OptionalDouble least =
        IntStream.range(0, ohms.length)
            .filter(item -> items.get(item).isUnit())
            .mapToDouble(item -> ohms[item])
            .min();
    if (least.isEmpty()) {
      return least;
    }
    if (Double.isInfinite(least.getAsDouble())) {
      return wantedVolts <= supplyVolts
          ? OptionalDouble.of(Double.POSITIVE_INFINITY)
          : OptionalDouble.empty();
    }
    double largest = supplyVolts * least.getAsDouble() / wantedVolts - ohms[at];
    return largest > 0 ? OptionalDouble.of(largest) : OptionalDouble.empty();
  }

  /**
   * The largest bias resistors of the E24 series that the Modbus specification allows, 450 to 650
   * ohm, and that give every unit an idle voltage; see {@link #largestOhms}.
   *
   * @return empty where none does
   */
  public static OptionalDouble preferredOhms(
      SegmentCircuit circuit, int at, double supplyVolts, double wantedVolts) {
    double most =
        Math.min(
            largestOhms(circuit, at, supplyVolts, wantedVolts).orElse(0),
            Levels.GREATEST_BIAS_OHMS);
    if (most < Levels.LEAST_BIAS_OHMS) {
      return OptionalDouble.empty();
    }
    double preferred = PreferredResistor.e24AtMost(most);
    return preferred < Levels.LEAST_BIAS_OHMS
        ? OptionalDouble.empty()
        : OptionalDouble.of(preferred);
  }
}
