package org.headhouse.linter.rules.address;

import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.site.AddressRange;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Equipment;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * Free addresses for the items that need another one, handed out along the chain: the lowest first,
 * and none twice, so that following all remedies at once leaves no new mistake. On a live line they
 * are above all others: who answers at an address that is free in the file is not known. Address 1
 * is for the head unit only. Equipment gets what the policy keeps free for it, else an address
 * above all others, where it is in no unit's way.
 */
final class ProposedAddresses {
  private final IdentityHashMap<ChainItem, Integer> proposed = new IdentityHashMap<>();
  private final ExcludedAddresses excluded;
  private final Set<Integer> taken = new HashSet<>();
  private final boolean breakOrder;
  private final String without;

  private ProposedAddresses(Site site, RuleContext context) {
    ExcludedAddresses keptFree = context.sitePolicy().keptFree();
    excluded = HandedOut.never(site, context);
    site.items().forEach(item -> item.address().optional().ifPresent(taken::add));
    proposeForUnits(site, UnitsByRight.of(site, context), context.isLive());
    breakOrder = !context.isLive() && isRising(site, true) && !isRising(site, false);
    without = without(site);
    proposeForEquipment(site, keptFree);
  }

  static ProposedAddresses of(Site site, RuleContext context) {
    return new ProposedAddresses(site, context);
  }

  /** The addresses that are passed over where the units are numbered; empty for none. */
  private String without(Site site) {
    int highest = excluded.others().limit(site.units().size()).max().orElse(0);
    String passed =
        IntStream.rangeClosed(BusAddress.HEAD, highest)
            .filter(excluded::contains)
            .mapToObj(String::valueOf)
            .collect(Collectors.joining(", "));
    return passed.isEmpty() ? "" : ", without " + passed;
  }

  private void proposeForUnits(Site site, List<Unit> units, boolean live) {
    Set<Integer> met = new HashSet<>();
    Unit head = site.head();
    if (head != null && head.address().is(BusAddress.HEAD)) {
      met.add(BusAddress.HEAD);
    }
    int free = live ? highestOfUnits(site) : BusAddress.HEAD;
    for (Unit unit : units) {
      Integer address = unit.address().orNull();
      boolean isHeadAtOne = unit.isSameItemAs(head) && unit.address().is(BusAddress.HEAD);
      if (address == null
          || isHeadAtOne
          || (met.add(address) && !AddressValidity.isInvalid(unit, excluded))) {
        continue;
      }
      if (unit.isHead() && !excluded.contains(BusAddress.HEAD) && taken.add(BusAddress.HEAD)) {
        proposed.put(unit, BusAddress.HEAD);
        continue;
      }
      do {
        free++;
      } while (taken.contains(free) || excluded.contains(free));
      proposed.put(unit, free);
    }
    taken.addAll(proposed.values());
  }

  private static int highestOfUnits(Site site) {
    return site.units().stream()
        .filter(unit -> unit.address().isGiven() && !AddressValidity.isInvalid(unit))
        .mapToInt(unit -> unit.address().or(0))
        .max()
        .orElse(BusAddress.HEAD);
  }

  private void proposeForEquipment(Site site, ExcludedAddresses keptFree) {
    Set<Integer> met = new HashSet<>();
    for (ChainItem item : site.items()) {
      Integer address = item.address().orNull();
      if (item instanceof Equipment && address != null) {
        boolean isFirst = address != BusAddress.HEAD && met.add(address);
        if (!isFirst || AddressValidity.isInvalid(item)) {
          proposeFor(item, keptFree);
        }
      }
    }
  }

  private void proposeFor(ChainItem equipment, ExcludedAddresses keptFree) {
    int limit = Math.min(equipment.type().addressLimit(), BusAddress.STANDARD.to());
    int highest = taken.stream().filter(one -> one <= limit).reduce(BusAddress.HEAD, Math::max);
    IntStream kept = keptFree.ranges().stream().flatMapToInt(AddressRange::addresses);
    IntStream above = IntStream.rangeClosed(highest + 1, limit);
    IntStream others = IntStream.rangeClosed(BusAddress.HEAD + 1, limit);
    IntStream.concat(kept, IntStream.concat(above, others))
        .filter(address -> address <= limit && !taken.contains(address))
        .findFirst()
        .ifPresent(
            address -> {
              taken.add(address);
              proposed.put(equipment, address);
            });
  }

  /**
   * Whether the addresses rise along the chain.
   *
   * @param before without the units that get another address; else with what they get
   */
  private boolean isRising(Site site, boolean before) {
    int highest = 0;
    for (Unit unit : site.units()) {
      Integer other = proposed.get(unit);
      if (other != null && before) {
        continue;
      }
      int address = other == null ? unit.address().or(highest + 1) : other;
      if (address <= highest) {
        return false;
      }
      highest = address;
    }
    return true;
  }

  /** The address for a unit whose own is used twice or invalid. */
  int of(Unit unit) {
    Integer address = proposed.get(unit);
    if (address == null) {
      throw new IllegalArgumentException(unit.called() + " needs no other address");
    }
    return address;
  }

  /** What to do about the address of an item, which is used twice or invalid. */
  String remedy(ChainItem item) {
    Integer address = proposed.get(item);
    if (address == null || BusAddress.isReserved(address)) {
      return "give " + item.called() + " a line of its own";
    }
    return item instanceof Unit && breakOrder
        ? "number the units in the order of the chain" + without
        : "give " + item.called() + " address " + address;
  }
}
