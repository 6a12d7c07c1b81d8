package org.headhouse.linter.rules.commissioning;

import java.util.Collections;
import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.PairResistance;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
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
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.site.Voltage;
import org.jspecify.annotations.Nullable;

/**
 * {@code commissioning.measured-off}: the nodal analysis of the segment of the head unit; the
 * tolerance is common practice, no source.
 */
public final class CommissioningMeasuredOff implements SiteRule {
  /** Makes {@link SitePolicy#measuringTolerance}. */
  public static final Parameter<Double> TOLERANCE =
      new Parameter<>(
          "tolerance",
          "how far a measured value may lie outside the computed range, for parts, meter and"
              + " temperature",
          ParameterType.percent(),
          "10 %");

  /** So that 66 ohm on 60 ohm are still within 10 %. */
  private static final double ROUNDING = 1e-9;

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      ComputedSegment.yielding(
          RuleDescriptor.of(
              "commissioning.measured-off",
              "What was measured is what the line as written would show.",
              Level.ERROR,
              TOLERANCE));

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Commissioning record = site.commissioning().orNull();
    List<SegmentLine> segments = context.figures().segments();
    if (record == null || segments.isEmpty() || !site.stage().is(Stage.COMMISSIONED)) {
      return;
    }
    ComputedSegment first = ComputedSegment.of(ofHead(segments, site));
    if (first != null) {
      checkResistance(record, first.figures().pairResistance(), context);
      checkIdle(record, first.figures().idleVolts(), context);
    }
  }

  /** Where the head unit is; the first where nobody knows. */
  private static SegmentLine ofHead(List<SegmentLine> segments, Site site) {
    Unit head = site.head();
    return segments.stream()
        .filter(line -> line.segment().items().stream().anyMatch(it -> it.isSameItemAs(head)))
        .findFirst()
        .orElse(segments.get(0));
  }

  private static void checkResistance(
      Commissioning record, PairResistance computed, RuleContext context) {
    Resistance measured = record.pairResistance().orNull();
    double tolerance = context.sitePolicy().measuringTolerance() + ROUNDING;
    if (measured == null) {
      return;
    }
    boolean low = measured.ohms() < computed.lowOhms() * (1 - tolerance);
    if (low || measured.ohms() > computed.highOhms() * (1 + tolerance)) {
      context.report(
          record.pairResistance().place(),
          new Message(
              "the pair was measured as "
                  + measured.written()
                  + ", and the line as written has "
                  + Shown.ohms(computed.lowOhms())
                  + " to "
                  + Shown.ohms(computed.highOhms()),
              low
                  ? "a third terminator, a short or a wet joint is likely"
                  : "a terminator is missing, or the pair is broken on the way",
              "with the supply isolated, find and mend it, or write what is really fitted;"
                  + " then measure again"));
    }
  }

  /** The record does not say where it was measured, so the range is that of all units. */
  private static void checkIdle(
      Commissioning record, @Nullable List<Double> computed, RuleContext context) {
    Voltage measured = record.idleVoltage().orNull();
    double tolerance = context.sitePolicy().measuringTolerance() + ROUNDING;
    if (measured == null || computed == null) {
      return;
    }
    double lowest = Collections.min(computed);
    double highest = Collections.max(computed);
    boolean low = measured.volts() < lowest * (1 - tolerance);
    if (low || measured.volts() > highest * (1 + tolerance)) {
      context.report(
          record.idleVoltage().place(),
          new Message(
              "the idle line was measured as "
                  + measured.written()
                  + ", and as written it has "
                  + Shown.volts(lowest)
                  + " to "
                  + Shown.volts(highest),
              low
                  ? "bias is missing or weak, or more loads the line than is written"
                  : "a terminator is missing, or the line is biased at a second place",
              "find and mend it, or write what is really fitted; then measure again"));
    }
  }
}
