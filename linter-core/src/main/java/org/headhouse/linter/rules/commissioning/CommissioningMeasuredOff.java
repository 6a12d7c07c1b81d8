package org.headhouse.linter.rules.commissioning;

import java.util.HashMap;
import java.util.Map;
import org.headhouse.linter.figures.LatestReadings;
import org.headhouse.linter.figures.LatestReadings.Taken;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentReadings;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.ReadingRange;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.segment.ComputedSegment;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * {@code commissioning.measured-off}: the nodal analysis of a segment over all tolerances; the
 * error of a hand meter is common practice, no source.
 */
public final class CommissioningMeasuredOff implements SiteRule {
  /** Makes {@link SitePolicy#meterShare}. */
  public static final Parameter<Double> TOLERANCE =
      new Parameter<>(
          "tolerance",
          "how far the meter may be off, as a share of the value that it shows; 0.8 ohm or 3 mV"
              + " is added",
          ParameterType.percent("0 %", "20 %"),
          "1 %");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      ComputedSegment.yielding(
              RuleDescriptor.of(
                  "commissioning.measured-off",
                  "Every measured value is within the range computed from the file for that place.",
                  Level.ERROR,
                  TOLERANCE))
          .yieldingTo("reference.unknown");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning record = site.commissioning().orNull();
    if (record == null || !site.stage().is(Stage.COMMISSIONED)) {
      return;
    }
    LatestReadings taken = LatestReadings.of(record, site, context.figures());
    Map<SegmentLine, SegmentReadings> ranges = new HashMap<>();
    for (Taken<Resistance> one : taken.pairOhms()) {
      checkResistance(one, ranges, context);
    }
    if (context.figures().knowsPlacesOfBias()) {
      for (Taken<Voltage> one : taken.idleVolts()) {
        checkIdle(one, ranges, context);
      }
    }
  }

  /** Null where another rule reports what makes the figures of the segment meaningless. */
  private static @Nullable SegmentReadings readings(
      Taken<?> taken, Map<SegmentLine, SegmentReadings> ranges) {
    SegmentLine line = taken.place().line();
    return line.hasFaultThatDistortsFigures()
        ? null
        : ranges.computeIfAbsent(line, SegmentLine::readings);
  }

  private static void checkResistance(
      Taken<Resistance> taken, Map<SegmentLine, SegmentReadings> ranges, RuleContext context) {
    SegmentReadings readings = readings(taken, ranges);
    ReadingRange accepted = readings == null ? null : readings.pairOhms(taken.place().index());
    Resistance measured = taken.reading().orNull();
    if (measured != null && accepted != null && !accepted.contains(measured.ohms())) {
      context.report(
          taken.reading().place(), ReadingMessages.ofResistance(taken.place(), measured, accepted));
    }
  }

  private static void checkIdle(
      Taken<Voltage> taken, Map<SegmentLine, SegmentReadings> ranges, RuleContext context) {
    SegmentReadings readings = readings(taken, ranges);
    Voltage measured = taken.reading().orNull();
    if (readings == null || measured == null) {
      return;
    }
    ReadingRange accepted = readings.idleVolts(taken.place().index());
    if (!accepted.contains(measured.volts())) {
      context.report(
          context
              .finding(
                  taken.reading().place(),
                  readings.isHeld()
                      ? ReadingMessages.ofHeldLine(taken.place(), measured, accepted)
                      : ReadingMessages.ofUnheldLine(taken.place(), measured))
              .at(readings.isHeld() ? Level.ERROR : Level.WARNING));
    }
  }
}
