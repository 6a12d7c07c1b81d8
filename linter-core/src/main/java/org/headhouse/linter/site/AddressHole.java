package org.headhouse.linter.site;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;

/**
 * Addresses in a row that no unit has, below one that some unit has. A site that accepts such a gap
 * says why, and so holds the addresses: for a unit in store, or for a house that is to come.
 *
 * @param addresses from the lowest on, without those that no unit can have
 * @param next the unit with the next address
 */
public record AddressHole(List<Integer> addresses, Unit next) {
  /** The id of the rule that a site accepts gaps of. */
  public static final String RULE = "address.gap";

  public AddressHole {
    addresses = List.copyOf(addresses);
  }

  /**
   * All of a site, from the lowest on.
   *
   * @param excluded the addresses that no unit can have
   */
  public static List<AddressHole> of(Site site, ExcludedAddresses excluded) {
    TreeMap<Integer, Unit> byAddress = new TreeMap<>();
    for (Unit unit : site.units()) {
      unit.address().optional().ifPresent(address -> byAddress.putIfAbsent(address, unit));
    }
    List<AddressHole> holes = new ArrayList<>(0);
    int next = excluded.nextOther(BusAddress.BROADCAST);
    for (Map.Entry<Integer, Unit> entry : byAddress.entrySet()) {
      if (entry.getKey() > next) {
        List<Integer> addresses = new ArrayList<>();
        for (int one = next; one < entry.getKey(); one = excluded.nextOther(one)) {
          addresses.add(one);
        }
        holes.add(new AddressHole(addresses, entry.getValue()));
      }
      next = excluded.nextOther(Math.max(entry.getKey(), next - 1));
    }
    return holes;
  }

  /** The entry by which the site holds these addresses on a day; null where they are free. */
  public @Nullable SuppressionEntry heldBy(Site site, LocalDate today) {
    for (SuppressionEntry entry : site.suppressions()) {
      if (entry.accepts(RULE, next.name().orNull(), today)) {
        return entry;
      }
    }
    return null;
  }

  /** The addresses that a site holds on a day. */
  public static Set<Integer> held(Site site, ExcludedAddresses excluded, LocalDate today) {
    Set<Integer> held = new TreeSet<>();
    if (!site.suppressions().isEmpty()) {
      for (AddressHole hole : of(site, excluded)) {
        if (hole.heldBy(site, today) != null) {
          held.addAll(hole.addresses());
        }
      }
    }
    return held;
  }
}
