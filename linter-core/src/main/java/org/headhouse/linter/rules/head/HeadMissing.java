package org.headhouse.linter.rules.head;

import java.util.List;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code head.missing}. */
public final class HeadMissing implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("head.missing", "A chain has a head unit.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    if (site.chain().isGiven() && allAreOtherwise(site.units())) {
      String first = site.units().isEmpty() ? "the first unit" : site.units().get(0).called();
      context.report(
          site.units().isEmpty() ? site.chain().place() : site.units().get(0).role().place(),
          new Message(
              "no unit on the chain is the head unit",
              "without a head unit, followers get no outdoor readings",
              "set role: head for the unit that the weather station is wired to, usually "
                  + first));
    }
  }

  /** Whether every unit has a role that is understood, and none is the head unit's. */
  private static boolean allAreOtherwise(List<Unit> units) {
    for (Unit unit : units) {
      if (!unit.role().isGiven() || unit.isHead()) {
        return false;
      }
    }
    return true;
  }
}
