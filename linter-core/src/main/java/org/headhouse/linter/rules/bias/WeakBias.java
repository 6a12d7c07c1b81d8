package org.headhouse.linter.rules.bias;

import java.util.OptionalDouble;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.BiasSizing;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.PreferredResistor;
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
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/** {@code bias.weak}: the threshold of a receiver, The RS-485 Design Guide, TI SLLA272. */
public final class WeakBias implements SiteRule {
  private static final Parameter<Voltage> MARGIN =
      new Parameter<>(
          "margin",
          "what the idle voltage must have over the 200 mV of a receiver",
          ParameterType.voltage(),
          "20 mV");

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "bias.weak",
          "The bias holds every unit of an idle line above the 200 mV of a receiver, with a margin.",
          Level.ERROR,
          MARGIN);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    double wanted = Levels.RECEIVER_THRESHOLD_VOLTS + context.value(MARGIN).volts();
    for (SegmentLine line : context.figures().segments()) {
      SegmentFigures figures = line.isOutOfOrder() ? null : line.figures();
      IdleVoltage lowest = figures == null ? null : figures.lowestIdle();
      SegmentCircuit circuit = line.circuit();
      if (lowest != null && circuit != null && lowest.volts() < wanted) {
        report(line, circuit, lowest, wanted, context);
      }
    }
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
    String fitting = fitting(largest(line, circuit, bias, wanted));
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
                    fitting == null
                        ? "fit terminators with a capacitor in series, such as 120 ohm + 1 nF, or"
                            + " divide the segment by a repeater: resistors of 450 ohm or more do"
                            + " not do here"
                        : "fit " + fitting + " each, and write resistors: " + fitting))
            .related(unit.name().place().region(), "the lowest idle voltage is here")
            .fixedBy(
                fitting == null
                    ? null
                    : FixDraft.proposed(
                        "Fit bias resistors of " + fitting + " each",
                        Edit.write(bias.resistors().place(), fitting)));
    context.report(under ? finding : finding.at(Level.WARNING));
  }

  private static OptionalDouble largest(
      SegmentLine line, SegmentCircuit circuit, Bias bias, double wanted) {
    @Nullable Voltage supply = bias.supply().orNull();
    return supply == null
        ? OptionalDouble.empty()
        : BiasSizing.largestOhms(circuit, line.itemOf(bias), supply.volts(), wanted);
  }

  /** The resistor to fit, or null where none that may be fitted is low enough. */
  private static @Nullable String fitting(OptionalDouble largest) {
    if (largest.isPresent() && largest.getAsDouble() >= Levels.LEAST_BIAS_OHMS) {
      double fitting =
          PreferredResistor.e24AtMost(Math.min(largest.getAsDouble(), Levels.GREATEST_BIAS_OHMS));
      if (fitting >= Levels.LEAST_BIAS_OHMS) {
        return Shown.resistor(fitting);
      }
    }
    return null;
  }
}
