package org.headhouse.linter.rules.driver;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.BiasSizing;
import org.headhouse.linter.line.DriverRelief;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.PreferredResistor;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Termination;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * The one change with which every driver of a segment has its 54 ohm: terminators that fit the
 * cable, weaker bias where the idle line allows it, greater terminators, or fewer loads. Greater
 * terminators get a capacitor in series where the bias does not hold the idle line against them:
 * then one change serves both.
 */
public record DriverRemedy(String words, @Nullable FixDraft fix) {
  /** The greater of the two terminators that MODBUS over Serial Line V1.02 §3.4.5 names. */
  private static final double MOST_TERMINATOR_OHMS = 150;

  /** That which MODBUS over Serial Line V1.02 §3.4.5 has in series with a terminator. */
  private static final String USUAL_CAPACITOR = " + 1 nF";

  /**
   * The change for a segment in which a driver is overloaded.
   *
   * @param wantedIdleVolts what its bias has to hold
   */
  public static DriverRemedy of(SegmentLine line, SegmentNetwork network, double wantedIdleVolts) {
    OptionalDouble terminators = DriverRelief.leastTerminatorOhms(network.driven());
    DriverRemedy remedy = withImpedance(line, terminators);
    remedy = remedy == null ? withWeakerBias(line, network, wantedIdleVolts) : remedy;
    remedy =
        remedy == null
            ? withGreaterTerminators(line, network, terminators, wantedIdleVolts)
            : remedy;
    return remedy == null ? withFewerLoads(network) : remedy;
  }

  /** Where a terminator has less than the cable's impedance, and that impedance is enough. */
  private static @Nullable DriverRemedy withImpedance(SegmentLine line, OptionalDouble least) {
    List<ChainItem> low = line.endsUnderImpedance();
    Double ohms = line.impedanceOhms();
    return low.isEmpty()
            || ohms == null
            || least.isEmpty()
            || least.getAsDouble() > ohms * (1 + 1e-9)
        ? null
        : terminators(line, low, ohms, false);
  }

  private static @Nullable DriverRemedy withWeakerBias(
      SegmentLine line, SegmentNetwork network, double wantedIdleVolts) {
    OptionalDouble least = DriverRelief.leastBiasOhms(network.driven());
    Bias bias = line.holdingBiases().isEmpty() ? null : line.holdingBiases().get(0);
    Voltage supply = bias == null ? null : bias.supply().orNull();
    if (bias == null || supply == null || least.isEmpty()) {
      return null;
    }
    double ohms =
        Math.min(PreferredResistor.e24AtLeast(least.getAsDouble()), Levels.GREATEST_BIAS_OHMS);
    double most =
        BiasSizing.largestOhms(network.spread(), line.itemOf(bias), supply.volts(), wantedIdleVolts)
            .orElse(0);
    if (ohms < least.getAsDouble() || ohms > most) {
      return null;
    }
    String each = Shown.resistor(ohms);
    return new DriverRemedy(
        "isolate the supply, fit bias resistors of " + each + " each, and set resistors: " + each,
        FixDraft.proposed(
            "Fit bias resistors of " + each + " each", Edit.write(bias.resistors().place(), each)));
  }

  private static @Nullable DriverRemedy withGreaterTerminators(
      SegmentLine line, SegmentNetwork network, OptionalDouble least, double wantedIdleVolts) {
    if (least.isEmpty() || least.getAsDouble() > MOST_TERMINATOR_OHMS) {
      return null;
    }
    double ohms = PreferredResistor.e24AtLeast(least.getAsDouble());
    boolean blocking =
        !line.holdingBiases().isEmpty() && !network.holdsIdleWith(ohms, wantedIdleVolts);
    List<ChainItem> ends = blocking ? endsToBlock(line, ohms) : line.endsUnder(ohms);
    return terminators(line, ends, ohms, blocking);
  }

  private static List<ChainItem> endsToBlock(SegmentLine line, double ohms) {
    List<ChainItem> ends = new ArrayList<>();
    for (ChainItem end : List.of(line.segment().first(), line.segment().last())) {
      Termination fitted = line.segment().termination(end).orNull();
      if (fitted != null && fitted.isFitted()) {
        boolean blocks = fitted.capacitance() != null;
        if (!blocks || line.endsUnder(ohms).contains(end)) {
          ends.add(end);
        }
      }
    }
    return ends;
  }

  /**
   * @param blocking whether a terminator without a capacitor gets one
   */
  private static DriverRemedy terminators(
      SegmentLine line, List<ChainItem> ends, double ohms, boolean blocking) {
    String value = Shown.resistor(ohms) + (blocking ? USUAL_CAPACITOR : "");
    String where = ends.stream().map(ChainItem::called).collect(Collectors.joining(" and "));
    return new DriverRemedy(
        "isolate the supply, fit a terminator of " + value + " at " + where + ", and record it",
        FixDraft.proposed(
            "Fit a terminator of " + value + " at " + where,
            ends.stream().map(end -> terminator(line, end, ohms, blocking)).toArray(Edit[]::new)));
  }

  /** A capacitor in series stays. */
  private static Edit terminator(SegmentLine line, ChainItem end, double ohms, boolean blocking) {
    Termination old = line.segment().termination(end).orNull();
    String rest =
        old == null || old.capacitance() == null
            ? (blocking ? USUAL_CAPACITOR : "")
            : " + " + old.capacitance().written();
    return Edit.write(line.segment().termination(end).place(), Shown.resistor(ohms) + rest);
  }

  private static DriverRemedy withFewerLoads(SegmentNetwork network) {
    OptionalDouble loads = DriverRelief.mostUnitLoads(network.driven());
    return new DriverRemedy(
        loads.isEmpty()
            ? "fit terminators of the cable's impedance and bias resistors of 450 to 650 ohm, or"
                + " divide the segment with a repeater"
            : "divide the segment with a repeater, or use types of lower load: "
                + Shown.unitLoads(Math.floor(loads.getAsDouble() * 8) / 8)
                + " unit loads in all leave 54 ohm",
        null);
  }
}
