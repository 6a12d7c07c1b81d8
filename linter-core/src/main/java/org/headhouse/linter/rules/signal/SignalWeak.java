package org.headhouse.linter.rules.signal;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SiteMeasure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.CableReach;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.ReceivedVoltage;
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
          "how far a received signal must be above a receiver's 200 mV in the worst case",
          ParameterType.within(ParameterType.voltage(), Voltage::volts, "0 mV", "1.5 V"),
          "0 mV");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      ComputedSegment.yielding(
              RuleDescriptor.of(
                  "signal.weak",
                  "Every item receives every other item above the 200 mV that a receiver needs, in the worst case of all tolerances.",
                  Level.ERROR,
                  MARGIN))
          .yieldingTo("driver.overloaded");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    double wanted = context.sitePolicy().wantedSignalVolts();
    for (ComputedSegment segment : ComputedSegment.of(context.figures())) {
      // Into less than 54 ohm no 1.5 V are promised, so there is nothing to count with.
      ReceivedVoltage worst =
          segment.line().overloadedDriver() == null
              ? segment.network().weakestReceivedAtWorst()
              : null;
      ReceivedVoltage nominal =
          worst != null && worst.volts() < wanted ? segment.figures().weakestReceived() : null;
      if (worst != null && nominal != null) {
        report(segment, nominal, worst, SiteMeasure.of(site), context);
      }
    }
  }

  private static void report(
      ComputedSegment segment,
      ReceivedVoltage nominal,
      ReceivedVoltage worst,
      Measure measure,
      RuleContext context) {
    double wanted = context.sitePolicy().wantedSignalVolts();
    SegmentLine line = segment.line();
    boolean under = nominal.volts() < Levels.RECEIVER_THRESHOLD_VOLTS;
    ReceivedVoltage weakest = under ? nominal : worst;
    ChainItem from = line.segment().items().get(weakest.from());
    ChainItem to = line.segment().items().get(weakest.to());
    Finding finding =
        context
            .finding(
                to.name().place(),
                new Message(
                    to.called()
                        + (under ? " receives only " : " may receive only ")
                        + Shown.voltsBeside(
                            under ? Levels.RECEIVER_THRESHOLD_VOLTS : wanted,
                            Math.max(0, weakest.volts()))
                        + " from "
                        + from.called()
                        + (under
                            ? " (computed); a receiver needs 200 mV"
                            : " (computed at worst); at least "
                                + Shown.volts(wanted)
                                + " is wanted"),
                    measure.length(segment.circuit().lengthMetres())
                        + " of this cable loses too much signal, and messages get lost",
                    remedy(
                        segment,
                        measure,
                        CableReach.longestScale(segment.network().spread(), wanted))))
            .about("from " + from.called())
            .related(from.name().place().region(), "the sender is here");
    context.report(ComputedSegment.atLevelOf(nominal.volts(), finding));
  }

  private static String remedy(ComputedSegment segment, Measure measure, OptionalDouble scale) {
    if (scale.isEmpty() || scale.getAsDouble() <= 0) {
      return "no cable is short enough: look for terminators of too low a value, or for too"
          + " much bias";
    }
    SegmentLine line = segment.line();
    double longest = segment.circuit().lengthMetres() * scale.getAsDouble();
    OptionalInt gauge = thinnest(segment.network(), scale.getAsDouble());
    ChainItem last = line.lastWithinMetres(longest);
    boolean firstRun = last.equals(line.segment().first());
    return (gauge.isPresent() ? "use " + gauge.getAsInt() + " AWG or thicker, or " : "")
        + (firstRun
            ? "fit a repeater in the run after " + last.called()
            : "fit a repeater at or before " + last.called())
        + " (this cable reaches "
        + measure.atMost(longest)
        + ")";
  }

  /** The thinnest usual gauge whose conductors have no more than a share of what is laid. */
  private static OptionalInt thinnest(SegmentNetwork network, double share) {
    double most = network.spread().cable().greatestOhmsPerMetre() * share;
    return USUAL_GAUGES.stream()
        .mapToInt(Integer::intValue)
        .filter(awg -> network.cable(Wire.awg(awg)).greatestOhmsPerMetre() <= most)
        .findFirst();
  }
}
