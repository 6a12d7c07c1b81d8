package org.headhouse.linter.rules.bias;

import java.util.OptionalDouble;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.BiasSizing;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.SegmentFigures;
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
      RuleDescriptor.of(
              "bias.weak",
              "The bias holds every unit of an idle line above the 200 mV that a receiver needs, with a margin.",
              Level.ERROR,
              MARGIN)
          .yieldingTo(
              "termination.undeclared",
              "termination.mid-line",
              "cable.length-unknown",
              "cable.too-long",
              "segment.overloaded",
              "bias.several",
              "bias.out-of-range");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    double wanted = context.sitePolicy().wantedIdleVolts();
    for (SegmentLine line : context.figures().segments()) {
      SegmentFigures figures = line.isOutOfOrder() ? null : line.figures();
      IdleVoltage lowest = figures == null ? null : figures.lowestIdle();
      SegmentCircuit circuit = line.circuit();
      if (lowest != null
          && circuit != null
          && lowest.volts() < wanted
          && !isToldOfResistors(line, lowest)) {
        report(line, circuit, lowest, wanted, context);
      }
    }
  }

  /** Resistors over the range leave too little margin; that they are over it is told already. */
  private static boolean isToldOfResistors(SegmentLine line, IdleVoltage lowest) {
    Resistance each = line.biases().get(0).resistors().orNull();
    return lowest.volts() >= Levels.RECEIVER_THRESHOLD_VOLTS
        && each != null
        && each.ohms() > Levels.GREATEST_BIAS_OHMS;
  }

  private static void report(
      SegmentLine line,
      SegmentCircuit circuit,
      IdleVoltage lowest,
      double wanted,
      RuleContext context) {
    Bias bias = line.biases().get(0);
    ChainItem unit = line.segment().items().get(lowest.item());
    boolean under = lowest.volts() < Levels.RECEIVER_THRESHOLD_VOLTS;
    OptionalDouble fitting = fitting(line, circuit, bias, wanted);
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
                    remedy(line, fitting)))
            .related(unit.name().place().region(), "the lowest idle voltage is here")
            .fixedBy(fix(line, bias, fitting));
    context.report(under ? finding : finding.at(Level.WARNING));
  }

  private static OptionalDouble fitting(
      SegmentLine line, SegmentCircuit circuit, Bias bias, double wanted) {
    @Nullable Voltage supply = bias.supply().orNull();
    return supply == null
        ? OptionalDouble.empty()
        : BiasSizing.preferredOhms(circuit, line.itemOf(bias), supply.volts(), wanted);
  }

  private static String remedy(SegmentLine line, OptionalDouble fitting) {
    ChainItem end = line.endWithLowTerminator();
    if (end != null) {
      return "correct the terminator of "
          + end.called()
          + " first: no cable asks for so low a value";
    }
    if (fitting.isPresent()) {
      String each = Shown.resistor(fitting.getAsDouble());
      return "fit " + each + " each, and write resistors: " + each;
    }
    return "fit terminators with a capacitor in series, such as 120 ohm + 1 nF, or divide the"
        + " segment by a repeater: resistors of 450 ohm or more do not do here";
  }

  private static @Nullable FixDraft fix(SegmentLine line, Bias bias, OptionalDouble fitting) {
    if (fitting.isEmpty() || line.endWithLowTerminator() != null) {
      return null;
    }
    String each = Shown.resistor(fitting.getAsDouble());
    return FixDraft.proposed(
        "Fit bias resistors of " + each + " each", Edit.write(bias.resistors().place(), each));
  }
}
