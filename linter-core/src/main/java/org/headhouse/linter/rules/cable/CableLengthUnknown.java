package org.headhouse.linter.rules.cable;

import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/**
 * {@code cable.length-unknown}: reported once for each segment, at the first item without a length.
 */
public final class CableLengthUnknown implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "cable.length-unknown",
          "The cable length from each item of the chain to the next is known.",
          Level.NOTE);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (SegmentLine line : context.figures().segments()) {
      List<ChainItem> without = line.withoutLength();
      if (!without.isEmpty()) {
        context.report(finding(without, context));
      }
    }
  }

  private static Finding finding(List<ChainItem> without, RuleContext context) {
    ChainItem first = without.get(0);
    int others = without.size() - 1;
    Finding finding =
        context.finding(
            first.name().place(),
            new Message(
                "the cable length after "
                    + first.called()
                    + (others == 0
                        ? " is missing"
                        : " and " + others + (others == 1 ? " other" : " others") + " is missing"),
                "the voltages of this segment cannot be computed",
                "measure the run and set cable-to-next"));
    finding = finding.aboutItems(ChainItem.names(without));
    for (ChainItem other : without.subList(1, without.size())) {
      finding =
          finding.related(
              other.name().place().region(),
              "the length after " + other.called() + " is missing too");
    }
    return finding;
  }
}
