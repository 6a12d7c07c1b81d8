package org.headhouse.linter.rules.address;

import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What to do about the addresses that items of one site must give up; computed for the first of
 * them, and the same for all.
 */
final class AddressRemedies {
  private final Site site;
  private final RuleContext context;
  private @Nullable ProposedAddresses proposed;
  private @Nullable FixDraft renumbering;

  AddressRemedies(Site site, RuleContext context) {
    this.site = site;
    this.context = context;
  }

  /** The free addresses that are handed out. */
  ProposedAddresses proposed() {
    ProposedAddresses known = proposed;
    if (known == null) {
      known = ProposedAddresses.of(site, context);
      renumbering = Renumbering.of(site, context);
      proposed = known;
    }
    return known;
  }

  /**
   * In words, for an item whose address is used twice or invalid. On a live line that moves one
   * unit, and the fix moves others too.
   */
  String words(ChainItem item) {
    String one = proposed().remedy(item);
    return context.isLive() && fix(item) != null
        ? one + ", or renumber the units as the goal changes says"
        : one;
  }

  /** All units numbered anew; null for other items, and where the units cannot be numbered. */
  @Nullable FixDraft fix(ChainItem item) {
    proposed();
    return item instanceof Unit ? renumbering : null;
  }
}
