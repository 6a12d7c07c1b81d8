package org.headhouse.linter.rules.bias;

import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.IdleLevels;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * {@code bias.supply}: the −7 to +12 V that a receiver bears, TI SLLA272 and Analog Devices AN-960;
 * a supply of 5 V and a tenth more is common practice, no source.
 */
public final class BiasSupply implements SiteRule {
  private static final String WANTED = "5 V";

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "bias.supply",
          "The supply of the bias is at most 5.5 V, and leaves both conductors between -7 and 12 V.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (SegmentLine line : context.figures().segments()) {
      Bias highest = highest(line.biases());
      SegmentNetwork network = highest == null ? null : line.network();
      IdleLevels outside = network == null ? null : outside(network);
      Double most = network == null ? null : mostAtTolerance(network);
      for (Bias bias : line.biases()) {
        Voltage supply = bias.supply().orNull();
        if (supply != null && supply.volts() > Levels.MOST_BIAS_SUPPLY_VOLTS) {
          boolean isHighest = bias.equals(highest);
          report(bias, supply, isHighest ? outside : null, isHighest ? most : null, context);
        }
      }
    }
  }

  private static @Nullable Bias highest(List<Bias> biases) {
    Bias highest = null;
    double most = Levels.MOST_BIAS_SUPPLY_VOLTS;
    for (Bias bias : biases) {
      Voltage supply = bias.supply().orNull();
      if (supply != null && supply.volts() > most) {
        highest = bias;
        most = supply.volts();
      }
    }
    return highest;
  }

  /** The levels at the item where they are the highest, if a receiver does not bear them. */
  private static @Nullable IdleLevels outside(SegmentNetwork network) {
    List<IdleLevels> levels = network.idleLevels();
    IdleLevels worst = null;
    for (IdleLevels one : levels == null ? List.<IdleLevels>of() : levels) {
      if (!one.isBorne() && (worst == null || one.d1Volts() > worst.d1Volts())) {
        worst = one;
      }
    }
    return worst;
  }

  /**
   * What D1 reaches with every supply at the upper end of its tolerance, where that is more than a
   * receiver bears; else null. All voltages rise alike with the supplies.
   */
  private static @Nullable Double mostAtTolerance(SegmentNetwork network) {
    List<IdleLevels> levels = network.idleLevels();
    double most =
        levels == null ? 0 : levels.stream().mapToDouble(IdleLevels::d1Volts).max().orElse(0);
    double reached = most * (1 + network.spread().tolerances().supply());
    return reached > Levels.GREATEST_LINE_VOLTS ? reached : null;
  }

  private static void report(
      Bias bias,
      Voltage supply,
      @Nullable IdleLevels outside,
      @Nullable Double mostAtTolerance,
      RuleContext context) {
    String fact = "the supply of the bias at \"" + bias.at().or("") + "\" is " + supply.written();
    Message message =
        outside == null
            ? new Message(
                fact
                    + ", over the 5 V and a tenth that line drivers run on"
                    + (mostAtTolerance == null
                        ? ""
                        : "; at the upper end of its tolerance D1 of the idle line reaches "
                            + Shown.voltsBeside(Levels.GREATEST_LINE_VOLTS, mostAtTolerance)),
                "a receiver that fails or loses its supply then takes current that it is not made"
                    + " for",
                remedy())
            : new Message(
                fact
                    + "; D1 of the idle line is computed at "
                    + Shown.voltsBeside(Levels.GREATEST_LINE_VOLTS, outside.d1Volts()),
                "receivers bear -7 to 12 V against common, and may be destroyed by more",
                remedy());
    context.report(
        context
            .finding(bias.supply().place(), message)
            .at(outside == null ? Level.WARNING : Level.ERROR)
            .fixedBy(
                FixDraft.proposed(
                    "Feed the bias from " + WANTED, Edit.write(bias.supply().place(), WANTED))));
  }

  private static String remedy() {
    return "feed the resistors from " + WANTED + ", and write supply: " + WANTED;
  }
}
