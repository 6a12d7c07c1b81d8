package org.headhouse.linter.rules.bias;

import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.BiasChoice;
import org.headhouse.linter.line.BiasSizing;
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
 * {@code bias.out-of-range}: MODBUS over Serial Line V1.02 §3.4.6.
 *
 * <p>Where the idle voltage is below the threshold as well, {@code bias.weak} reports that more
 * severe fault, with the value to fit. Weak pulls that a device has built in are no bias.
 */
public final class BiasOutOfRange implements SiteRule {
  private static final double LEAST_OFFERED_OHMS = 470;
  private static final double GREATEST_OFFERED_OHMS = 620;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "bias.out-of-range", "Bias resistors are 450 to 650 ohm each.", Level.WARNING)
          .yieldingTo("bias.weak");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (SegmentLine line : context.figures().segments()) {
      for (Bias bias : line.holdingBiases()) {
        Resistance each = bias.resistors().orNull();
        if (each != null && isOutside(each.ohms()) && !line.isIdleUnderThreshold()) {
          report(line, bias, each, context);
        }
      }
    }
  }

  private static boolean isOutside(double ohms) {
    return ohms < Levels.LEAST_BIAS_OHMS || ohms > Levels.GREATEST_BIAS_OHMS;
  }

  private static void report(SegmentLine line, Bias bias, Resistance each, RuleContext context) {
    boolean low = each.ohms() < Levels.LEAST_BIAS_OHMS;
    double wantedVolts = context.sitePolicy().wantedIdleVolts();
    String wanted =
        wanted(line, bias, low ? LEAST_OFFERED_OHMS : GREATEST_OFFERED_OHMS, wantedVolts);
    context.report(
        context
            .finding(
                bias.resistors().place(),
                new Message(
                    "the bias resistors are "
                        + each.written()
                        + ", "
                        + (low ? "under" : "over")
                        + " Modbus's 450 to 650 ohm",
                    low
                        ? "they take current that the drivers need"
                        : "the least sensitive receivers see no clear idle level",
                    wanted == null
                        ? "isolate the supply, and fit 470 ohm each and terminators with a"
                            + " capacitor, such as"
                            + " 120 ohm + 1 nF"
                        : "isolate the supply, fit " + wanted + ", and set resistors: " + wanted))
            .fixedBy(
                wanted == null
                    ? null
                    : FixDraft.proposed(
                        "Fit bias resistors of " + wanted + " each",
                        Edit.write(bias.resistors().place(), wanted))));
  }

  /** The value to fit; null where each value in the range leaves the idle voltage too low. */
  private static @Nullable String wanted(
      SegmentLine line, Bias bias, double most, double wantedVolts) {
    SegmentNetwork network = line.network();
    Voltage supply = bias.supply().orNull();
    if (network == null || supply == null) {
      return Shown.resistor(most);
    }
    int at = line.itemOf(bias);
    BiasChoice choice = BiasSizing.choice(network.spread(), at, supply.volts(), wantedVolts);
    if (choice == null || choice.item() != at) {
      return null;
    }
    return choice.mostOhms() >= most ? Shown.resistor(most) : BiasRemedy.each(choice);
  }
}
