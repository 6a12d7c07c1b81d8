package org.headhouse.linter.rules.head;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.Repeater;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code head.not-first}. */
public final class HeadNotFirst implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "head.not-first", "The head unit is the first unit on the chain.", Level.ERROR)
          .yieldingTo("head.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Unit head = site.head();
    if (head != null && (!isFirstUnit(head, site) || isBehindRepeaterAtStart(site))) {
      context.report(
          head.role().place(),
          new Message(
              "the head unit " + head.called() + " is item " + (head.index() + 1) + " of the chain",
              "the line is planned, terminated and proved from the head unit outwards",
              isFirstUnit(head, site)
                  ? "list the repeater after " + head.called() + ", as it must be wired"
                  : "list "
                      + head.called()
                      + " first if it is wired first; otherwise make the first unit the head"
                      + " unit"));
    }
  }

  private static boolean isFirstUnit(Unit head, Site site) {
    return head.isSameItemAs(site.units().get(0));
  }

  /** Nothing lies before such a repeater that it could repeat. */
  private static boolean isBehindRepeaterAtStart(Site site) {
    return site.items().get(0) instanceof Repeater;
  }
}
