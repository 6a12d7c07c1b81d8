package org.headhouse.linter.rules.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * {@code address.gap}: reported once, at the unit after the first gap, with all of them. Addresses
 * that are kept free are no gap.
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
    if (isCounted(site.units(), excluded)) {
      return;
    }
    SortedMap<Integer, Unit> byAddress = byAddress(site.units(), excluded);
    // Two units with one address leave a gap; address.duplicate reports its cause.
    if (byAddress.size() == site.units().size() && !isHeadAway(site)) {
      List<Gap> gaps = gaps(byAddress, excluded);
      if (!gaps.isEmpty()) {
        report(site, gaps, excluded, context);
      }
    }
  }

  /** Whether the units have one address after the other along the chain, as most do. */
  private static boolean isCounted(List<Unit> units, ExcludedAddresses excluded) {
    int before = 0;
    for (Unit unit : units) {
      before = excluded.nextOther(before);
      if (!unit.address().is(before)) {
        return false;
      }
    }
    return true;
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

  /**
   * A gap in the addresses.
   *
   * @param first the first that is missing
   * @param unit the one after the gap
   * @param address of that unit
   */
  private record Gap(int first, Unit unit, int address) {
    IntStream missing(ExcludedAddresses excluded) {
      return excluded.others().filter(one -> first <= one && one < address);
    }

    /** As many as addresses are missing: which they are changes when others before are given. */
    Stream<Finding.Case> cases(ExcludedAddresses excluded) {
      return missing(excluded).mapToObj(one -> new Finding.Case(unit.name().orNull(), null));
    }
  }

  private static List<Gap> gaps(Map<Integer, Unit> byAddress, ExcludedAddresses excluded) {
    List<Gap> gaps = new ArrayList<>(0);
    int before = 0;
    for (Map.Entry<Integer, Unit> entry : byAddress.entrySet()) {
      int expected = excluded.nextOther(before);
      int address = entry.getKey();
      if (address != expected) {
        gaps.add(new Gap(expected, entry.getValue(), address));
      }
      before = address;
    }
    return gaps;
  }

  private static void report(
      Site site, List<Gap> gaps, ExcludedAddresses excluded, RuleContext context) {
    Gap gap = gaps.get(0);
    int others = gaps.size() - 1;
    Finding finding =
        context
            .finding(
                gap.unit().address().place(),
                new Message(
                    missing(gap, excluded)
                        + (others == 0
                            ? ""
                            : others == 1
                                ? "; there is another gap further on"
                                : "; there are " + others + " other gaps further on"),
                    "the next visit cannot tell a forgotten unit from a free address",
                    "give "
                        + gap.unit().called()
                        + " address "
                        + gap.first()
                        + ", and the units after it the next ones"))
            .about(gaps.stream().flatMap(one -> one.cases(excluded)).toList())
            .fixedBy(Renumbering.of(site, context.sitePolicy().keptFree()));
    for (Gap other : gaps.subList(1, gaps.size())) {
      finding = finding.related(other.unit().address().place().region(), missing(other, excluded));
    }
    context.report(finding);
  }

  private static String missing(Gap gap, ExcludedAddresses excluded) {
    int[] missing = gap.missing(excluded).toArray();
    int first = gap.first();
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
