package org.headhouse.linter.rules.address;

import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * {@code address.gap}: reported once, at the unit after the first gap. Addresses that are kept free
 * are no gap.
 */
public final class AddressGap implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "address.gap",
              "The addresses are 1, 2, 3 and so on without a gap, but for those that the policy keeps free.",
              Level.ERROR)
          .yieldingTo(
              "head.address",
              "address.duplicate",
              "address.reserved",
              "address.beyond-limit",
              "address.kept-free");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    ExcludedAddresses excluded = context.sitePolicy().keptFree().and(site.addressesOfEquipment());
    SortedMap<Integer, Unit> byAddress = byAddress(site.units(), excluded);
    // Two units with one address leave a gap; address.duplicate reports its cause.
    if (byAddress.size() == site.units().size() && !isHeadAway(site)) {
      reportFirst(site, byAddress, excluded, context);
    }
  }

  /** The units by their addresses, up to the first whose address is missing or invalid. */
  private static SortedMap<Integer, Unit> byAddress(List<Unit> units, ExcludedAddresses keptFree) {
    SortedMap<Integer, Unit> byAddress = new TreeMap<>();
    for (Unit unit : units) {
      Integer address = unit.address().orNull();
      if (address == null || AddressValidity.isInvalid(unit, keptFree)) {
        break;
      }
      byAddress.putIfAbsent(address, unit);
    }
    return byAddress;
  }

  /** Then {@code head.address} reports the cause of the gap at 1. */
  private static boolean isHeadAway(Site site) {
    Unit head = site.head();
    return head != null && !head.address().is(1);
  }

  private static void reportFirst(
      Site site, Map<Integer, Unit> byAddress, ExcludedAddresses excluded, RuleContext context) {
    int expected = 0;
    for (Map.Entry<Integer, Unit> entry : byAddress.entrySet()) {
      expected = excluded.nextOther(expected);
      int address = entry.getKey();
      if (address != expected) {
        Unit unit = entry.getValue();
        context.report(
            context
                .finding(
                    unit.address().place(),
                    new Message(
                        missing(expected, address, excluded),
                        "the next visit cannot tell a forgotten unit from a free address",
                        "give "
                            + unit.called()
                            + " address "
                            + expected
                            + ", and the units after it the next ones"))
                .fixedBy(Renumbering.of(site, context.sitePolicy().keptFree())));
        return;
      }
    }
  }

  private static String missing(int first, int next, ExcludedAddresses keptFree) {
    int[] missing =
        keptFree.others().filter(address -> first <= address && address < next).toArray();
    int last = missing[missing.length - 1];
    if (missing.length == 1) {
      return "no unit has address " + first;
    }
    return "no unit has the addresses "
        + first
        + " to "
        + last
        + (missing.length <= last - first ? ", also without those that are kept free" : "");
  }
}
