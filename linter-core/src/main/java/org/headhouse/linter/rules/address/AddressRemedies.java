package org.headhouse.linter.rules.address;

import org.headhouse.linter.result.FixDraft;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/**
 * What to do about the addresses that items of one site must give up; computed for the first of
 * them, and the same for all.
 */
final class AddressRemedies {
  private final Site site;
  private final ExcludedAddresses keptFree;
  private @Nullable ProposedAddresses proposed;
  private @Nullable FixDraft renumbering;

  AddressRemedies(Site site, ExcludedAddresses keptFree) {
    this.site = site;
    this.keptFree = keptFree;
  }

  /** The free addresses that are handed out. */
  ProposedAddresses proposed() {
    ProposedAddresses known = proposed;
    if (known == null) {
      known = ProposedAddresses.of(site, keptFree);
      renumbering = Renumbering.of(site, keptFree);
      proposed = known;
    }
    return known;
  }

  /** In words, for an item whose address is used twice or invalid. */
  String words(ChainItem item) {
    return proposed().remedy(item);
  }

  /** All units numbered anew; null for other items, and where the units cannot be numbered. */
  @Nullable FixDraft fix(ChainItem item) {
    proposed();
    return item instanceof Unit ? renumbering : null;
  }
}
