package org.headhouse.linter.rules.traffic;

import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.figures.TrafficFit;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;

/** {@code traffic.overrun}: the times of MODBUS over Serial Line V1.02. */
public final class TrafficOverrun implements SiteRule {
  static final double ALL_OF_THE_TIME = 1;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "traffic.overrun", "The messages on the line fit into their periods.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Traffic traffic = context.figures().traffic();
    if (traffic != null && traffic.utilisation() > ALL_OF_THE_TIME) {
      TrafficFit fit = TrafficFit.within(SitePolicy.DEFAULT.mostUtilisation(), traffic, site);
      context.report(
          context
              .finding(
                  fit.place(),
                  new Message(
                      "the traffic needs "
                          + Shown.percentBeside(ALL_OF_THE_TIME, traffic.utilisation())
                          + " of the available time",
                      "messages queue up, and some are never sent",
                      fit.remedy()))
              .fixedBy(TrafficFix.fix(fit, site)));
    }
  }
}
