package org.headhouse.linter.rules.address;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.AddressHole;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * {@code address.gap}: reported once, at the unit after the first gap, with all of them. Addresses
 * that are kept free are no gap.
 */
public final class AddressGap implements SiteRule {
  private static final int MOST_ENTRIES = 3;

  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              AddressHole.RULE,
              "The addresses are 1, 2, 3 and so on without a gap, except for those that the policy keeps free.",
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
    // Two units with one address leave a gap; address.duplicate reports its cause.
    if (areAddressesFit(site, excluded) && !isHeadAway(site)) {
      List<AddressHole> holes = AddressHole.of(site, excluded);
      if (!holes.isEmpty()) {
        report(site, holes, context);
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

  /** Whether each unit has an address of its own that it can have. */
  private static boolean areAddressesFit(Site site, ExcludedAddresses keptFree) {
    Set<Integer> met = new HashSet<>();
    for (Unit unit : site.units()) {
      Integer address = unit.address().orNull();
      if (address == null || !met.add(address) || AddressValidity.isInvalid(unit, keptFree)) {
        return false;
      }
    }
    return true;
  }

  /** Then {@code head.address} reports the cause of the gap at 1. */
  private static boolean isHeadAway(Site site) {
    Unit head = site.head();
    return head != null && !head.address().is(1);
  }

  private static void report(Site site, List<AddressHole> holes, RuleContext context) {
    AddressHole hole = holes.get(0);
    int others = holes.size() - 1;
    Finding finding =
        context
            .finding(
                hole.next().address().place(),
                new Message(
                    missing(hole)
                        + (others == 0
                            ? ""
                            : others == 1
                                ? "; there is another gap further on"
                                : "; there are " + others + " other gaps further on"),
                    "on the next visit nobody can tell a spare address from a missing unit",
                    context.isLive() ? live(holes) : renumber(hole)))
            .about(holes.stream().flatMap(AddressGap::cases).toList())
            .fixedBy(Renumbering.of(site, context));
    for (AddressHole other : holes.subList(1, holes.size())) {
      finding = finding.related(other.next().address().place().region(), missing(other));
    }
    context.report(finding);
  }

  /** As many as addresses are missing: which they are changes when others before are given. */
  private static Stream<Finding.Case> cases(AddressHole hole) {
    return hole.addresses().stream()
        .map(one -> new Finding.Case(hole.next().name().orNull(), null));
  }

  private static String renumber(AddressHole hole) {
    return "give "
        + hole.next().called()
        + " address "
        + hole.addresses().get(0)
        + " and renumber those after it";
  }

  /** Nobody sets live units anew for a number: the entry is what is usually wanted. */
  private static String live(List<AddressHole> holes) {
    return "look for a unit there; if there is none, add to suppressions, with a reason: "
        + holes.stream()
            .limit(MOST_ENTRIES)
            .map(AddressGap::entry)
            .collect(Collectors.joining(" and "))
        + (holes.size() > MOST_ENTRIES ? " and so on" : "")
        + "; or "
        + renumber(holes.get(0));
  }

  /** Without a reason it is refused, so that pasting it accepts nothing yet. */
  private static String entry(AddressHole hole) {
    String name = hole.next().name().or("").replace("\\", "\\\\").replace("\"", "\\\"");
    return "- {rule: " + AddressHole.RULE + ", unit: \"" + name + "\", justification: }";
  }

  private static String missing(AddressHole hole) {
    List<Integer> missing = hole.addresses();
    int first = missing.get(0);
    int last = missing.get(missing.size() - 1);
    if (missing.size() == 1) {
      return "no unit has address " + first;
    }
    return "no unit has addresses "
        + first
        + " to "
        + last
        + (missing.size() <= last - first ? ", also without those that are kept free" : "");
  }
}
