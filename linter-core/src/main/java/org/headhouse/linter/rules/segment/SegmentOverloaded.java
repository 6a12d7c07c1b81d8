package org.headhouse.linter.rules.segment;

import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/**
 * {@code segment.overloaded}: MODBUS over Serial Line V1.02 §3.4.1; The RS-485 Design Guide, TI
 * SLLA272.
 */
public final class SegmentOverloaded implements SiteRule {
  /** What the near side of a new repeater adds. */
  private static final double REPEATER_SIDE = 1;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "segment.overloaded", "A segment carries at most 32 unit loads.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (SegmentLine line : context.figures().segments()) {
      if (line.isOverloaded()) {
        report(line, context);
      }
    }
  }

  private static void report(SegmentLine line, RuleContext context) {
    List<ChainItem> items = line.segment().items();
    ChainItem last = line.lastWithinUnitLoads(Levels.MOST_UNIT_LOADS);
    ChainItem over = items.get(Math.min(items.indexOf(last) + 1, items.size() - 1));
    ChainItem before = line.lastWithinUnitLoads(Levels.MOST_UNIT_LOADS - REPEATER_SIDE);
    context.report(
        context
            .finding(
                over.name().place(),
                new Message(
                    over.called()
                        + " takes the segment over the limit of 32 unit loads; the total is "
                        + Shown.unitLoads(line.unitLoads()),
                    "a driver cannot bring that many receivers to a safe level",
                    "fit a repeater after " + before.called() + ", or use types of lower load"))
            .aboutItems(ChainItem.names(items.subList(items.indexOf(over), items.size()))));
  }
}
