package org.headhouse.linter.rules.bias;

import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.Tolerances;
import org.headhouse.linter.result.Finding;
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

/** {@code bias.weak}: the threshold of a receiver, The RS-485 Design Guide, TI SLLA272. */
public final class BiasWeak implements SiteRule {
  /** Makes {@link SitePolicy#idleMarginVolts}. */
  public static final Parameter<Voltage> MARGIN =
      new Parameter<>(
          "margin",
          "how far the idle voltage must be above a receiver's 200 mV in the worst case",
          ParameterType.within(ParameterType.voltage(), Voltage::volts, "0 mV", "1.5 V"),
          "0 mV");

  /** Makes {@link Tolerances#resistors}. */
  public static final Parameter<Double> RESISTORS =
      tolerance("resistors", "the tolerance of bias resistors whose entry gives none", 5);

  /** Makes {@link Tolerances#supply}. */
  public static final Parameter<Double> SUPPLY =
      tolerance("supply", "the tolerance of the supply of a bias", 5);

  /** Makes {@link Tolerances#terminators}. */
  public static final Parameter<Double> TERMINATORS =
      tolerance("terminators", "the tolerance of terminators", 5);

  /** Makes {@link Tolerances#cable}. */
  public static final Parameter<Double> CABLE =
      tolerance("cable", "the tolerance of the cable, for its length and its make", 2);

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      ComputedSegment.yielding(
              RuleDescriptor.of(
                  "bias.weak",
                  "On an idle line the bias holds every item above the 200 mV that a receiver needs, in the worst case of all tolerances.",
                  Level.ERROR,
                  MARGIN,
                  RESISTORS,
                  SUPPLY,
                  TERMINATORS,
                  CABLE))
          .yieldingTo("bias.out-of-range", "driver.overloaded");

  private static Parameter<Double> tolerance(String name, String description, int percent) {
    return new Parameter<>(name, description, ParameterType.percent("0 %", "20 %"), percent + " %");
  }

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    double wanted = context.sitePolicy().wantedIdleVolts();
    for (ComputedSegment segment : ComputedSegment.of(context.figures())) {
      IdleVoltage worst =
          segment.line().holdingBiases().isEmpty() ? null : segment.network().lowestIdleAtWorst();
      IdleVoltage nominal =
          worst != null && worst.volts() < wanted ? segment.figures().lowestIdle() : null;
      if (worst != null
          && nominal != null
          && !isForTerminators(segment)
          && !isForResistors(segment.line().holdingBiases().get(0), nominal)) {
        report(segment, nominal, worst, wanted, context);
      }
    }
  }

  /** Then {@code driver.overloaded} has the terminators to fit. */
  private static boolean isForTerminators(ComputedSegment segment) {
    return segment.line().overloadedDriver() != null
        && !segment.line().endsUnderImpedance().isEmpty();
  }

  /** Above the threshold, {@code bias.out-of-range} reports what takes the margin. */
  private static boolean isForResistors(Bias bias, IdleVoltage nominal) {
    Resistance each = bias.resistors().orNull();
    return nominal.volts() >= Levels.RECEIVER_THRESHOLD_VOLTS
        && each != null
        && each.ohms() > Levels.GREATEST_BIAS_OHMS;
  }

  private static void report(
      ComputedSegment segment,
      IdleVoltage nominal,
      IdleVoltage worst,
      double wanted,
      RuleContext context) {
    boolean under = nominal.volts() < Levels.RECEIVER_THRESHOLD_VOLTS;
    Bias bias = segment.line().holdingBiases().get(0);
    ChainItem item = segment.line().segment().items().get((under ? nominal : worst).item());
    BiasRemedy remedy = BiasRemedy.of(segment.line(), segment.network(), bias, wanted);
    Finding finding =
        context
            .finding(
                bias.resistors().place(),
                new Message(
                    under ? weak(item, nominal.volts()) : maybeWeak(item, worst.volts(), wanted),
                    under
                        ? "receivers may take noise on an idle line for a message, and miss the"
                            + " real one"
                        : "slight noise looks like the start of a message",
                    remedy.words()))
            .related(item.name().place().region(), "the lowest idle voltage is here")
            .fixedBy(remedy.fix());
    context.report(ComputedSegment.atLevelOf(nominal.volts(), finding));
  }

  private static String weak(ChainItem item, double volts) {
    return "the idle voltage at "
        + item.called()
        + " is "
        + Shown.voltsBeside(Levels.RECEIVER_THRESHOLD_VOLTS, volts)
        + " (computed), "
        + Shown.marginDecibels(Levels.marginDecibels(volts))
        + " against a receiver's 200 mV";
  }

  private static String maybeWeak(ChainItem item, double volts, double wanted) {
    return "the idle voltage at "
        + item.called()
        + " can fall to "
        + Shown.voltsBeside(wanted, volts)
        + " (computed at worst); at least "
        + Shown.volts(wanted)
        + " is wanted";
  }
}
