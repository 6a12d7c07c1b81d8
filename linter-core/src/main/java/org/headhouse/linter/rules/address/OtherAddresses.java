package org.headhouse.linter.rules.address;

import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What addresses the items of a site could have instead: computed when the first result of a rule
 * asks, and shared by the others, since a site may have one for each unit.
 */
final class OtherAddresses {
  private final Site site;
  private final ExcludedAddresses keptFree;
  private @Nullable ProposedAddresses proposed;
  private boolean isRenumberingKnown;
  private @Nullable FixDraft renumbering;

  OtherAddresses(Site site, RuleContext context) {
    this.site = site;
    this.keptFree = context.sitePolicy().keptFree();
  }

  /** Free addresses for the items that need another one. */
  ProposedAddresses proposed() {
    ProposedAddresses known = proposed;
    if (known == null) {
      known = ProposedAddresses.of(site, keptFree);
      proposed = known;
    }
    return known;
  }

  /** The fix that numbers the units anew, for a unit; null for other items, and where none is. */
  @Nullable FixDraft renumberingFor(ChainItem item) {
    if (!(item instanceof Unit)) {
      return null;
    }
    if (!isRenumberingKnown) {
      renumbering = Renumbering.of(site, keptFree);
      isRenumberingKnown = true;
    }
    return renumbering;
  }
}
