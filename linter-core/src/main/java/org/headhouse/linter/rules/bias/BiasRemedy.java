package org.headhouse.linter.rules.bias;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.BiasChoice;
import org.headhouse.linter.line.BiasResistors;
import org.headhouse.linter.line.BiasSizing;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.rules.driver.DriverRemedy;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Percentage;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Side;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * How to hold a segment that its bias does not hold: other resistors, the same in the middle of the
 * line, or terminators that draw nothing. Where a line driver is overloaded as well, the change
 * that it needs serves both.
 */
record BiasRemedy(String words, @Nullable FixDraft fix) {
  private static final String WITHOUT_RESISTORS =
      "fit terminators with a capacitor in series, such as 120 ohm + 1 nF, or divide the"
          + " segment with"
          + " a repeater: no resistors of 450 to 650 ohm are enough here";

  static BiasRemedy of(SegmentLine line, SegmentNetwork network, Bias bias, double wantedVolts) {
    if (line.overloadedDriver() != null) {
      DriverRemedy both = DriverRemedy.of(line, network, wantedVolts);
      return new BiasRemedy(both.words(), both.fix());
    }
    Voltage supply = bias.supply().orNull();
    int at = line.itemOf(bias);
    BiasChoice choice =
        supply == null
            ? null
            : BiasSizing.choice(network.spread(), at, supply.volts(), wantedVolts);
    if (supply == null
        || choice == null
        || !network.drives(choice.item(), resistors(choice, supply.volts()))) {
      return new BiasRemedy(WITHOUT_RESISTORS, null);
    }
    String each = each(choice);
    String closer = closer(bias, network.spread().tolerances().resistors());
    String fit =
        each + " each" + range(choice) + (closer == null ? "" : ", of " + closer + " or better,");
    if (choice.item() == at) {
      return new BiasRemedy(
          "isolate the supply, fit "
              + (closer == null ? fit + "," : fit)
              + " and set resistors: "
              + each
              + (closer == null ? "" : " and tolerance: " + closer),
          FixDraft.proposed(
              "Fit bias resistors of " + each + " each",
              edits(bias, closer, Edit.write(bias.resistors().place(), each))));
    }
    ChainItem item = line.segment().items().get(choice.item());
    return new BiasRemedy(
        "no resistors are enough at \""
            + bias.at().or("")
            + "\": isolate the supply, move the bias to "
            + item.called()
            + ", fit "
            + fit
            + " there, and set "
            + (closer == null ? "at and resistors" : "at, resistors and tolerance")
            + " to match",
        moved(line, bias, item, each, closer));
  }

  /** The usual tolerance, where the resistors are allowed to be off by more; else null. */
  private static @Nullable String closer(Bias bias, double usual) {
    Percentage own = bias.tolerance().orNull();
    return own == null || own.share() <= usual ? null : Shown.tolerance(usual);
  }

  private static Edit[] edits(Bias bias, @Nullable String closer, Edit... others) {
    List<Edit> edits = new ArrayList<>(List.of(others));
    if (closer != null) {
      edits.add(Edit.write(bias.tolerance().place(), closer));
    }
    return edits.toArray(Edit[]::new);
  }

  /** The nearest value on sale; 450 ohm itself where there is none between it and the most. */
  static String each(BiasChoice choice) {
    return Shown.resistor(ohms(choice));
  }

  /** A pair of them. */
  static BiasResistors resistors(BiasChoice choice, double supplyVolts) {
    return new BiasResistors(ohms(choice), supplyVolts);
  }

  private static double ohms(BiasChoice choice) {
    Double standard = choice.standardOhms();
    return standard == null ? Levels.LEAST_BIAS_OHMS : standard;
  }

  /** All values that are enough. */
  static String range(BiasChoice choice) {
    return " (450 to " + Shown.resistor(Math.floor(choice.mostOhms())) + " is enough)";
  }

  private static @Nullable FixDraft moved(
      SegmentLine line, Bias bias, ChainItem item, String each, @Nullable String closer) {
    String name = item.name().orNull();
    boolean needsSide = item instanceof Repeater && line.segment().side(item) == Side.IN;
    if (name == null || needsSide || bias.side().isGiven()) {
      return null;
    }
    return FixDraft.proposed(
        "Move the bias to " + item.called() + ", with resistors of " + each + " each",
        edits(
            bias,
            closer,
            Edit.write(bias.at().place(), name),
            Edit.write(bias.resistors().place(), each)));
  }
}
