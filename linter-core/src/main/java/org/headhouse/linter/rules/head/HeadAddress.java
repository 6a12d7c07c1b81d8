package org.headhouse.linter.rules.head;

import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.rules.address.Renumbering;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/** {@code head.address}. */
public final class HeadAddress implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("head.address", "The head unit has address 1.", Level.ERROR)
          .yieldingTo("head.duplicate");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    Unit head = site.head();
    Integer address = head == null ? null : head.address().orNull();
    if (head != null && address != null && address != 1) {
      context.report(
          context
              .finding(
                  head.address().place(),
                  new Message(
                      "the head unit " + head.called() + " has address " + address,
                      "followers look for the shared readings at address 1",
                      "give " + head.called() + " address 1"))
              .fixedBy(Renumbering.of(site, context)));
    }
  }
}
