package org.headhouse.linter.rules.head;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code head.duplicate}. */
public final class HeadDuplicate implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("head.duplicate", "A chain has one head unit only.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    List<Unit> heads = site.units().stream().filter(Unit::isHead).toList();
    for (int i = 1; i < heads.size(); i++) {
      Unit again = heads.get(i);
      context.report(
          context
              .finding(
                  again.role().place(),
                  new Message(
                      again.called() + " is a second head unit",
                      "two units that share readings disturb each other on the line",
                      "give " + again.called() + " the role follower"))
              .related(
                  heads.get(0).role().place().region(),
                  heads.get(0).called() + " is the first head unit"));
    }
  }
}
