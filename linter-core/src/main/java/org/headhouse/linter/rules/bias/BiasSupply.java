package org.headhouse.linter.rules.bias;

import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.BiasChoice;
import org.headhouse.linter.line.BiasSizing;
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
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * {@code bias.supply}: the −7 to +12 V that a receiver bears, TI SLLA272 and Analog Devices AN-960;
 * a supply of 5 V and a tenth more is common practice, no source.
 */
public final class BiasSupply implements SiteRule {
  private static final double WANTED_VOLTS = 5;
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
          report(
              bias,
              supply,
              isHighest ? outside : null,
              isHighest ? most : null,
              resistors(bias, line, context),
              context);
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

  /** The resistors that hold the line from 5 V, where those that are fitted do not; else null. */
  private static @Nullable String resistors(Bias bias, SegmentLine line, RuleContext context) {
    Resistance fitted = bias.resistors().orNull();
    SegmentNetwork network = line.hasFaultThatDistortsFigures() ? null : line.network();
    if (fitted == null || network == null || !line.holdingBiases().equals(List.of(bias))) {
      return null;
    }
    int at = line.itemOf(bias);
    double wantedVolts = context.sitePolicy().wantedIdleVolts();
    BiasChoice choice = BiasSizing.choice(network.spread(), at, WANTED_VOLTS, wantedVolts);
    return choice == null || choice.item() != at || fitted.ohms() <= choice.mostOhms()
        ? null
        : BiasRemedy.each(choice);
  }

  private static void report(
      Bias bias,
      Voltage supply,
      @Nullable IdleLevels outside,
      @Nullable Double mostAtTolerance,
      @Nullable String resistors,
      RuleContext context) {
    String fact = "the supply of the bias at \"" + bias.at().or("") + "\" is " + supply.written();
    Message message =
        outside == null
            ? new Message(
                fact
                    + ", over the 5.5 V maximum of line drivers"
                    + (mostAtTolerance == null
                        ? ""
                        : "; at the upper end of its tolerance D1 of the idle line reaches "
                            + Shown.voltsBeside(Levels.GREATEST_LINE_VOLTS, mostAtTolerance)),
                "a receiver that has failed or lost its supply takes more current than it is"
                    + " made for",
                remedy(resistors))
            : new Message(
                fact
                    + "; D1 of the idle line is computed at "
                    + Shown.voltsBeside(Levels.GREATEST_LINE_VOLTS, outside.d1Volts()),
                "receivers tolerate -7 to 12 V against common, and more may destroy them",
                remedy(resistors));
    context.report(
        context
            .finding(bias.supply().place(), message)
            .at(outside == null ? Level.WARNING : Level.ERROR)
            .fixedBy(
                FixDraft.proposed(
                    "Feed the bias from "
                        + WANTED
                        + (resistors == null ? "" : ", by " + resistors + " each"),
                    edits(bias, resistors))));
  }

  private static String remedy(@Nullable String resistors) {
    return resistors == null
        ? "isolate the supply, feed the resistors from " + WANTED + ", and set supply: " + WANTED
        : "isolate the supply, fit resistors of "
            + resistors
            + " each, feed them from "
            + WANTED
            + ", and record both";
  }

  private static Edit[] edits(Bias bias, @Nullable String resistors) {
    Edit supply = Edit.write(bias.supply().place(), WANTED);
    return resistors == null
        ? new Edit[] {supply}
        : new Edit[] {Edit.write(bias.resistors().place(), resistors), supply};
  }
}
