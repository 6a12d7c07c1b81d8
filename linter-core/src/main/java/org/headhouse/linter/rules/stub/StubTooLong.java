package org.headhouse.linter.rules.stub;

import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SiteMeasure;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.StubLimit;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.segment.EdgeWords;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Place;

/**
 * {@code stub.too-long}: MODBUS over Serial Line V1.02 §3.4.3, and a tenth of the rise time (TI
 * SN65HVD1x data sheet).
 */
public final class StubTooLong implements SiteRule {
  /** Makes {@link SitePolicy#velocityFactor}. */
  public static final Parameter<Double> VELOCITY_FACTOR =
      new Parameter<>(
          "velocity-factor",
          "the speed of a signal in a cable whose entry gives none, as a share of the speed of"
              + " light",
          ParameterType.within(ParameterType.number(), Double::doubleValue, "0.4", "1"),
          "0.66");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "stub.too-long",
          "A stub from the trunk to a unit is at most 20 m long, and a signal passes it within a"
              + " tenth of its rise time.",
          Level.ERROR,
          VELOCITY_FACTOR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Measure measure = SiteMeasure.of(site);
    for (SegmentLine line : context.figures().segments()) {
      for (ChainItem item : line.segment().items()) {
        Setting<Length> stub = line.segment().connection(item).stub();
        Length length = stub.orNull();
        if (length != null) {
          check(item, stub.place(), length, line, measure, context);
        }
      }
    }
  }

  private static void check(
      ChainItem item,
      Place place,
      Length stub,
      SegmentLine line,
      Measure measure,
      RuleContext context) {
    if (stub.metres() <= line.longestStubMetres()) {
      return;
    }
    if (stub.metres() > StubLimit.LONGEST_METRES) {
      String modbus = "the Modbus limit is " + measure.ofStandard(StubLimit.LONGEST_METRES);
      context.report(place, message(item, stub, modbus, line, measure));
      return;
    }
    ChainItem quickest = line.quickestDriver();
    Interval rise = quickest == null ? null : quickest.type().riseTime().orNull();
    if (quickest != null && rise != null) {
      String limit =
          measure.atMost(line.longestStubMetres())
              + " is a tenth of the rise time of the driver of "
              + quickest.called()
              + " ("
              + rise.written()
              + ")";
      context.report(
          context.finding(place, message(item, stub, limit, line, measure)).at(Level.WARNING));
    }
  }

  private static Message message(
      ChainItem unit, Length stub, String limit, SegmentLine line, Measure measure) {
    return new Message(
        unit.called() + " is on a " + stub.written() + " stub; " + limit,
        "the open end of a stub reflects the signal" + EdgeWords.of(line),
        "isolate the supply, and run the trunk through the unit, or shorten the stub to "
            + measure.atMost(line.longestStubMetres()));
  }
}
