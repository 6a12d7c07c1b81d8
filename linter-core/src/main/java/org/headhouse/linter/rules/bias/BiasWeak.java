package org.headhouse.linter.rules.bias;

import java.util.OptionalDouble;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.BiasSizing;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.segment.ComputedSegment;
import org.headhouse.linter.site.Bias;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/** {@code bias.weak}: the threshold of a receiver, The RS-485 Design Guide, TI SLLA272. */
public final class BiasWeak implements SiteRule {
  /** Makes {@link SitePolicy#idleMarginVolts}. */
  public static final Parameter<Voltage> MARGIN =
      new Parameter<>(
          "margin",
          "what the idle voltage must have over the 200 mV of a receiver",
          ParameterType.voltage(),
          "20 mV");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      ComputedSegment.yielding(
              RuleDescriptor.of(
                  "bias.weak",
                  "The bias holds every unit of an idle line above the 200 mV that a receiver needs, with a margin.",
                  Level.ERROR,
                  MARGIN))
          .yieldingTo("bias.out-of-range");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    double wanted = context.sitePolicy().wantedIdleVolts();
    for (ComputedSegment segment : ComputedSegment.of(context.figures())) {
      IdleVoltage lowest = segment.figures().lowestIdle();
      if (lowest != null
          && lowest.volts() < wanted
          && !isForResistors(segment.line().biases().get(0), lowest)) {
        report(segment, lowest, wanted, context);
      }
    }
  }

  /** Above the threshold, {@code bias.out-of-range} reports what takes the margin. */
  private static boolean isForResistors(Bias bias, IdleVoltage lowest) {
    Resistance each = bias.resistors().orNull();
    return lowest.volts() >= Levels.RECEIVER_THRESHOLD_VOLTS
        && each != null
        && each.ohms() > Levels.GREATEST_BIAS_OHMS;
  }

  private static void report(
      ComputedSegment segment, IdleVoltage lowest, double wanted, RuleContext context) {
    SegmentLine line = segment.line();
    Bias bias = line.biases().get(0);
    ChainItem unit = line.segment().items().get(lowest.item());
    boolean under = lowest.volts() < Levels.RECEIVER_THRESHOLD_VOLTS;
    OptionalDouble fitting = fitting(segment, bias, wanted);
    Finding finding =
        context
            .finding(
                bias.resistors().place(),
                new Message(
                    "the idle voltage at "
                        + unit.called()
                        + " is computed as "
                        + Shown.volts(lowest.volts())
                        + ", "
                        + Shown.decibels(Levels.marginDecibels(lowest.volts()))
                        + " against the 200 mV that a receiver needs"
                        + (under ? "" : ", wanted are " + Shown.volts(wanted)),
                    under
                        ? "an idle line then looks like noise, and units answer to what nobody sent"
                        : "a little noise then looks like the start of a message",
                    remedy(segment, fitting)))
            .related(unit.name().place().region(), "the lowest idle voltage is here")
            .fixedBy(fix(segment, bias, fitting));
    context.report(ComputedSegment.atLevelOf(lowest.volts(), finding));
  }

  private static OptionalDouble fitting(ComputedSegment segment, Bias bias, double wanted) {
    @Nullable Voltage supply = bias.supply().orNull();
    return supply == null
        ? OptionalDouble.empty()
        : BiasSizing.preferredOhms(
            segment.circuit(), segment.line().itemOf(bias), supply.volts(), wanted);
  }

  private static String remedy(ComputedSegment segment, OptionalDouble fitting) {
    String terminator = segment.terminatorRemedy();
    if (terminator != null) {
      return terminator;
    }
    if (fitting.isPresent()) {
      String each = Shown.resistor(fitting.getAsDouble());
      return "fit " + each + " each, and write resistors: " + each;
    }
    return "fit terminators with a capacitor in series, such as 120 ohm + 1 nF, or divide the"
        + " segment by a repeater: resistors of 450 ohm or more do not do here";
  }

  private static @Nullable FixDraft fix(
      ComputedSegment segment, Bias bias, OptionalDouble fitting) {
    if (fitting.isEmpty() || segment.terminatorRemedy() != null) {
      return null;
    }
    String each = Shown.resistor(fitting.getAsDouble());
    return FixDraft.proposed(
        "Fit bias resistors of " + each + " each", Edit.write(bias.resistors().place(), each));
  }
}
