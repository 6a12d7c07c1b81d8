package org.headhouse.linter.rules.termination;

import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Setting;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Termination;

/**
 * {@code termination.mismatch}: the share is common practice, no source. The two terminators that
 * MODBUS over Serial Line V1.02 §3.4.5 names, 150 ohm and 120 ohm with a capacitor, are good on any
 * cable.
 */
public final class TerminationMismatch implements SiteRule {
  private static final double STANDARD_OHMS = 150;
  private static final double STANDARD_OHMS_WITH_CAPACITOR = 120;

  /** So that 96 and 144 ohm on 120 ohm are still within 20 %. */
  private static final double ROUNDING = 1e-9;

  private static final Parameter<Double> MOST =
      new Parameter<>(
          "most",
          "by how much a terminator may differ from the cable's impedance",
          ParameterType.percent("0 %", "50 %"),
          "20 %");

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "termination.mismatch",
              "A terminator matches the impedance of the cable within 20 %.",
              Level.WARNING,
              MOST)
          .yieldingTo("termination.mid-line", "driver.overloaded");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings line = site.line().orNull();
    Cable cable = line == null ? null : line.cable().orNull();
    Resistance impedance = cable == null ? null : cable.impedance().orNull();
    if (impedance == null || impedance.ohms() <= 0) {
      return;
    }
    for (SegmentLine segment : context.figures().segments()) {
      ChainItem first = segment.segment().first();
      check(first, segment, impedance, context);
      if (!first.isSameItemAs(segment.segment().last())) {
        check(segment.segment().last(), segment, impedance, context);
      }
    }
  }

  private static void check(
      ChainItem item, SegmentLine segment, Resistance impedance, RuleContext context) {
    Setting<Termination> setting = segment.segment().termination(item);
    Termination termination = setting.orNull();
    Resistance resistance = termination == null ? null : termination.resistance();
    if (termination == null || resistance == null || isStandard(termination, resistance)) {
      return;
    }
    double difference = Math.abs(resistance.ohms() / impedance.ohms() - 1);
    boolean overloads = resistance.ohms() < impedance.ohms() && segment.overloadedDriver() != null;
    if (difference > context.value(MOST) + ROUNDING && !overloads) {
      context.report(
          context
              .finding(
                  setting.place(),
                  new Message(
                      "the "
                          + termination.written()
                          + " terminator at "
                          + item.called()
                          + " is "
                          + Shown.percent(difference)
                          + " off the cable's "
                          + impedance.written(),
                      "part of the signal is reflected from that end",
                      "isolate the supply, fit " + impedance.written() + ", and record it"))
              .fixedBy(
                  FixDraft.proposed(
                      "Fit a terminator of " + impedance.written() + " at " + item.called(),
                      Edit.write(setting.place(), impedance.written()))));
    }
  }

  private static boolean isStandard(Termination termination, Resistance resistance) {
    return termination.capacitance() == null
        ? resistance.ohms() == STANDARD_OHMS
        : resistance.ohms() == STANDARD_OHMS_WITH_CAPACITOR;
  }
}
