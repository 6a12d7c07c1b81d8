package org.headhouse.linter.rules.driver;

import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.DriverLoad;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/** {@code driver.overloaded}: TIA/EIA-485-A promises 1.5 V into 54 ohm (TI SLLA272). */
public final class DriverOverloaded implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "driver.overloaded",
              "Every line driver has a load of at least 54 ohm: terminators, unit loads, bias and cable together.",
              Level.ERROR)
          .yieldingTo("segment.overloaded", "bias.out-of-range");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (SegmentLine line : context.figures().segments()) {
      DriverLoad driver = line.overloadedDriver();
      SegmentNetwork network = line.network();
      if (driver != null && network != null) {
        report(line, network, driver, context);
      }
    }
  }

  private static void report(
      SegmentLine line, SegmentNetwork network, DriverLoad driver, RuleContext context) {
    ChainItem sender = line.segment().items().get(driver.item());
    DriverRemedy remedy = DriverRemedy.of(line, network, context.sitePolicy().wantedIdleVolts());
    context.report(
        context
            .finding(
                sender.name().place(),
                new Message(
                    "the line driver of "
                        + sender.called()
                        + " has a load of "
                        + Shown.ohmsBeside(Levels.LEAST_DRIVER_LOAD_OHMS, driver.ohms())
                        + " (computed); at least 54 ohm is wanted",
                    "below 54 ohm a driver need not deliver its 1.5 V, and the signal may be"
                        + " too weak for the far items",
                    remedy.words()))
            .fixedBy(remedy.fix()));
  }
}
