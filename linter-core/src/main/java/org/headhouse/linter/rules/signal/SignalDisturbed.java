package org.headhouse.linter.rules.signal;

import java.util.List;
import org.headhouse.linter.figures.RingingRelief;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentRinging;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.Settling;
import org.headhouse.linter.line.StubLimit;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.segment.ComputedSegment;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;

/**
 * {@code signal.disturbed}: reflections by the method of characteristics (Branin, Proc. IEEE 55,
 * 1967); that a receiver looks at a bit in its middle is common practice, no source.
 */
public final class SignalDisturbed implements SiteRule {
  /** Makes {@link SitePolicy#usualInterface}. */
  public static final Parameter<Interval> RISE_TIME =
      new Parameter<>(
          "rise-time",
          "the rise time, 10 to 90 %, of a line driver whose type gives none",
          ParameterType.within(ParameterType.riseTime(), Interval::seconds, "1 ns", "10000 ns"),
          "100 ns");

  /** Makes {@link SitePolicy#usualInterface}. */
  public static final Parameter<Capacitance> CAPACITANCE =
      new Parameter<>(
          "capacitance",
          "the capacitance of a receiver whose type gives none",
          ParameterType.within(ParameterType.capacitance(), Capacitance::farads, "0 pF", "1 nF"),
          "50 pF");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      ComputedSegment.yielding(
              RuleDescriptor.of(
                  "signal.disturbed",
                  "Every edge has settled past the 200 mV of a receiver before the middle of a bit.",
                  Level.ERROR,
                  RISE_TIME,
                  CAPACITANCE))
          .yieldingTo(
              "termination.missing-at-end", "stub.too-long", "driver.overloaded", "signal.weak");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (ComputedSegment segment : ComputedSegment.of(context.figures())) {
      SegmentRinging ringing =
          hasCauseOfItsOwn(segment.line().segment()) ? null : segment.line().ringing();
      Double bit = ringing == null ? null : ringing.bitSeconds();
      if (ringing != null && bit != null && ringing.isDisturbed()) {
        report(segment, ringing, bit, site, context);
      }
    }
  }

  /**
   * An end without terminator, or a stub over 20 m: both are errors that say what the edges do. A
   * stub that is only warned of is not enough to be silent.
   */
  private static boolean hasCauseOfItsOwn(Segment segment) {
    for (ChainItem item : segment.items()) {
      Termination termination = segment.termination(item).orNull();
      Length stub = segment.connection(item).stub().orNull();
      if ((segment.endsAt(item) && termination != null && !termination.isFitted())
          || (stub != null && stub.metres() > StubLimit.LONGEST_METRES)) {
        return true;
      }
    }
    return false;
  }

  private static void report(
      ComputedSegment segment,
      SegmentRinging ringing,
      double bitSeconds,
      Site site,
      RuleContext context) {
    SegmentLine line = segment.line();
    Settling.Pair worst = ringing.settling().worst();
    List<ChainItem> items = line.segment().items();
    ChainItem from = worst == null ? line.segment().first() : items.get(worst.sender());
    ChainItem to = worst == null ? line.segment().last() : items.get(worst.receiver());
    Finding finding =
        context
            .finding(
                to.name().place(),
                new Message(
                    (worst == null
                            ? "edges from "
                                + from.called()
                                + " to "
                                + to.called()
                                + " may ring for "
                            : "an edge sent by "
                                + from.called()
                                + " may ring at "
                                + to.called()
                                + " for ")
                        + Shown.micros(ringing.settling().seconds())
                        + "; a bit of "
                        + Shown.micros(bitSeconds)
                        + " is read at its middle",
                    "a receiver that reads a reflection reads a wrong bit, and messages are lost"
                        + (worst == null
                            ? " (a rough bound: the segment is too large to follow every edge)"
                            : ""),
                    RingingRelief.words(line, ringing, site)))
            .about("from " + from.called())
            .related(from.name().place().region(), "the sender is here");
    // What only the rough bound says may be a false alarm.
    context.report(worst == null ? finding.at(Level.WARNING) : finding);
  }
}
