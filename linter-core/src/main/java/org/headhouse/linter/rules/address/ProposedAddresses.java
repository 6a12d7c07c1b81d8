package org.headhouse.linter.rules.address;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.Set;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * Free addresses for the units that need another one, handed out along the chain: the lowest first,
 * and none twice, so that following all remedies at once leaves no new mistake. Address 1 is for
 * the head unit only.
 */
final class ProposedAddresses {
  private final IdentityHashMap<Unit, Integer> proposed = new IdentityHashMap<>();

  private ProposedAddresses() {}

  static ProposedAddresses of(Site site, ExcludedAddresses keptFree) {
    ExcludedAddresses excluded = keptFree.and(site.addressesOfEquipment());
    Set<Integer> taken = new HashSet<>();
    site.units().forEach(unit -> unit.address().optional().ifPresent(taken::add));
    ProposedAddresses addresses = new ProposedAddresses();
    Set<Integer> met = new HashSet<>();
    int free = BusAddress.HEAD;
    for (Unit unit : site.units()) {
      Integer address = unit.address().orNull();
      if (address != null && (!met.add(address) || AddressValidity.isInvalid(unit, excluded))) {
        if (unit.isHead() && !excluded.contains(BusAddress.HEAD) && taken.add(BusAddress.HEAD)) {
          addresses.proposed.put(unit, BusAddress.HEAD);
          continue;
        }
        do {
          free++;
        } while (taken.contains(free) || excluded.contains(free));
        addresses.proposed.put(unit, free);
      }
    }
    return addresses;
  }

  /** The address for a unit whose own is used twice or invalid. */
  int of(Unit unit) {
    Integer address = proposed.get(unit);
    if (address == null) {
      throw new IllegalArgumentException(unit.called() + " needs no other address");
    }
    return address;
  }
}
