package org.headhouse.linter.rules.address;

import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.AddressHole;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;

/** The addresses that no remedy hands out. */
final class HandedOut {
  private HandedOut() {}

  /** What the policy keeps free, equipment has, or the site holds for a unit that is to come. */
  static ExcludedAddresses never(Site site, RuleContext context) {
    ExcludedAddresses excluded = context.sitePolicy().keptFree().and(site.addressesOfEquipment());
    return excluded.and(AddressHole.held(site, excluded, context.today()));
  }
}
