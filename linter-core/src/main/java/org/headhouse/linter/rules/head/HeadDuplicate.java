package org.headhouse.linter.rules.head;

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
      RuleDescriptor.of("head.duplicate", "A chain has only one head unit.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Unit first = null;
    for (Unit again : site.units()) {
      if (!again.isHead()) {
        continue;
      }
      if (first == null) {
        first = again;
        continue;
      }
      context.report(
          context
              .finding(
                  again.role().place(),
                  new Message(
                      again.called() + " is a second head unit",
                      "two units that share readings disturb each other on the line",
                      "set the unit and the file to role: follower for " + again.called()))
              .related(first.role().place().region(), first.called() + " is the first head unit"));
    }
  }
}
