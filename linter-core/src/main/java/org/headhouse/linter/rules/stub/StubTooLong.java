package org.headhouse.linter.rules.stub;

import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.StubLimit;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Interval;
import org.headhouse.linter.site.Length;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.source.Place;
import org.jspecify.annotations.Nullable;

/**
 * {@code stub.too-long}: MODBUS over Serial Line V1.02 §3.4.3, and a tenth of the rise time (TI
 * SN65HVD1x data sheet).
 */
public final class StubTooLong implements SiteRule {
  private static final Parameter<Double> VELOCITY_FACTOR =
      new Parameter<>(
          "velocity-factor",
          "speed of a signal in the cable, as a share of that of light",
          ParameterType.number(),
          "0.78");

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "stub.too-long",
          "A branch from the trunk to a unit is at most 20 m, and a signal passes it within a tenth of its rise.",
          Level.ERROR,
          VELOCITY_FACTOR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Segment segment : site.segments()) {
      ChainItem quickest = quickestDriver(segment);
      for (ChainItem item : segment.items()) {
        Length stub = segment.connection(item).stub().orNull();
        if (stub != null) {
          check(item, segment.connection(item).stub().place(), stub, quickest, context);
        }
      }
    }
  }

  /** Every stub of the segment reflects the signal of the quickest driver, so that one counts. */
  private static @Nullable ChainItem quickestDriver(Segment segment) {
    ChainItem quickest = null;
    double least = Double.POSITIVE_INFINITY;
    for (ChainItem item : segment.items()) {
      Interval rise = item.type().riseTime().orNull();
      if (rise != null && rise.seconds() > 0 && rise.seconds() < least) {
        quickest = item;
        least = rise.seconds();
      }
    }
    return quickest;
  }

  private static void check(
      ChainItem unit, Place place, Length stub, @Nullable ChainItem quickest, RuleContext context) {
    Interval rise = quickest == null ? null : quickest.type().riseTime().orNull();
    double factor = context.value(VELOCITY_FACTOR);
    double fitting =
        rise == null || factor <= 0
            ? StubLimit.LONGEST_METRES
            : StubLimit.metres(rise.seconds(), factor);
    if (stub.metres() > StubLimit.LONGEST_METRES) {
      context.report(
          place,
          message(
              unit,
              stub,
              "the " + Shown.metres(StubLimit.LONGEST_METRES) + " of the Modbus specification",
              Math.min(fitting, StubLimit.LONGEST_METRES)));
    } else if (quickest != null && rise != null && stub.metres() > fitting) {
      context.report(
          context
              .finding(
                  place,
                  message(
                      unit,
                      stub,
                      Shown.metres(fitting)
                          + ", a tenth of the rise of the line driver of "
                          + quickest.called()
                          + " ("
                          + rise.written()
                          + ")",
                      fitting))
              .at(Level.WARNING));
    }
  }

  private static Message message(ChainItem unit, Length stub, String limit, double most) {
    return new Message(
        unit.called() + " hangs on a branch of " + stub.written() + ", over " + limit,
        "the open end of a branch throws the signal back into the line",
        "lead the trunk itself through the unit, or shorten the branch to "
            + Shown.atMostMetres(most));
  }
}
