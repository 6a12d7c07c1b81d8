package org.headhouse.linter.rules.signal;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.CableReach;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.SegmentCircuit;
import org.headhouse.linter.line.Wire;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.segment.ComputedSegment;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Voltage;

/** {@code signal.weak}: driver and receiver levels of The RS-485 Design Guide, TI SLLA272. */
public final class SignalWeak implements SiteRule {
  /** What cable for RS-485 is sold in (common practice, no source). */
  private static final List<Integer> USUAL_GAUGES = List.of(24, 22, 20, 18, 16);

  /** Makes {@link SitePolicy#signalMarginVolts}. */
  public static final Parameter<Voltage> MARGIN =
      new Parameter<>(
          "margin",
          "what a received signal must have over the 200 mV of a receiver",
          ParameterType.voltage(),
          "100 mV");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      ComputedSegment.yielding(
          RuleDescriptor.of(
              "signal.weak",
              "Every unit receives every other above the 200 mV that a receiver needs, with a margin.",
              Level.ERROR,
              MARGIN));

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    double wanted = context.sitePolicy().wantedSignalVolts();
    for (ComputedSegment segment : ComputedSegment.of(context.figures())) {
      ReceivedVoltage weakest = segment.figures().weakestReceived();
      if (weakest != null && weakest.volts() < wanted) {
        report(segment, weakest, wanted, context);
      }
    }
  }

  private static void report(
      ComputedSegment segment, ReceivedVoltage weakest, double wanted, RuleContext context) {
    SegmentLine line = segment.line();
    ChainItem from = line.segment().items().get(weakest.from());
    ChainItem to = line.segment().items().get(weakest.to());
    boolean under = weakest.volts() < Levels.RECEIVER_THRESHOLD_VOLTS;
    Finding finding =
        context
            .finding(
                to.name().place(),
                new Message(
                    to.called()
                        + " receives "
                        + from.called()
                        + " with "
                        + Shown.volts(Math.max(0, weakest.volts()))
                        + " as computed, and a receiver needs 200 mV"
                        + (under ? "" : ", with the margin " + Shown.volts(wanted)),
                    "over "
                        + Shown.metres(segment.circuit().lengthMetres())
                        + " the cable takes "
                        + "what the driver gives, and messages are lost",
                    remedy(segment, CableReach.longestScale(segment.circuit(), wanted))))
            .related(from.name().place().region(), "the sender is here");
    context.report(ComputedSegment.atLevelOf(weakest.volts(), finding));
  }

  private static String remedy(ComputedSegment segment, OptionalDouble scale) {
    String terminator = segment.terminatorRemedy();
    if (terminator != null) {
      return terminator;
    }
    if (scale.isEmpty() || scale.getAsDouble() <= 0) {
      return "no cable is short enough: look for terminators of too low a value, or too much bias";
    }
    SegmentLine line = segment.line();
    SegmentCircuit circuit = segment.circuit();
    double longest = circuit.lengthMetres() * scale.getAsDouble();
    OptionalInt gauge = thinnest(circuit.ohmsPerMetre() * scale.getAsDouble(), line.celsius());
    ChainItem last = line.lastWithinMetres(longest);
    boolean firstRun = last.equals(line.segment().first());
    return (gauge.isPresent() ? "use a cable of " + gauge.getAsInt() + " AWG or thicker, or " : "")
        + (firstRun
            ? "put a repeater into the run behind " + last.called() + ": "
            : "put a repeater at " + last.called() + " or before: ")
        + Shown.atMostMetres(longest)
        + " of this cable are the most";
  }

  /** The thinnest usual gauge whose conductors have no more than a resistance. */
  private static OptionalInt thinnest(double ohmsPerMetre, double celsius) {
    return USUAL_GAUGES.stream()
        .mapToInt(Integer::intValue)
        .filter(awg -> Wire.awg(awg).resistanceOhmsPerMetre(celsius) <= ohmsPerMetre)
        .findFirst();
  }
}
