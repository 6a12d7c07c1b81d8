package org.headhouse.linter.rules.cable;

import org.headhouse.linter.result.Edit;
import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Cable;
import org.headhouse.linter.site.Gauge;
import org.headhouse.linter.site.LineSettings;
import org.headhouse.linter.site.Site;

/** {@code cable.too-thin}: MODBUS over Serial Line V1.02 §3.6 calls 24 AWG always sufficient. */
public final class CableTooThin implements SiteRule {
  private static final int THINNEST_AWG = 24;

  /** 24 AWG is 0.2047 mm2 (d = 0.127 mm · 92^((36 − 24)/39)); the trade sells it as 0.2 mm2. */
  private static final double THINNEST_AREA = 0.2;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "cable.too-thin", "The conductors are 24 AWG (0.2 mm2) or thicker.", Level.WARNING);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    LineSettings line = site.line().orNull();
    Cable cable = line == null ? null : line.cable().orNull();
    Gauge gauge = cable == null ? null : cable.gauge().orNull();
    if (cable != null && gauge != null && isThin(gauge)) {
      context.report(
          context
              .finding(
                  cable.gauge().place(),
                  new Message(
                      "the conductors are " + gauge.written() + ", thinner than 24 AWG",
                      "the signal loses strength along the cable, and thin wires break at terminals",
                      "use 24 AWG (0.2 mm2) or thicker"))
              .fixedBy(
                  FixDraft.proposed(
                      "Use a cable of 24 AWG", Edit.write(cable.gauge().place(), "24 AWG"))));
    }
  }

  private static boolean isThin(Gauge gauge) {
    if (gauge instanceof Gauge.Awg awg) {
      return awg.number() > THINNEST_AWG;
    }
    return ((Gauge.Area) gauge).squareMillimetres() < THINNEST_AREA;
  }
}
