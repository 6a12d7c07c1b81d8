package org.headhouse.linter.rules.address;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * {@code address.order}: reported once, at the first unit that is out of order, with all of them.
 */
public final class AddressOrder implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("address.order", "Addresses increase along the chain.", Level.WARNING)
          .yieldingTo(
              "head.missing",
              "head.duplicate",
              "head.not-first",
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
    List<Unit> units = numbered(site, context);
    List<Step> steps = new ArrayList<>(0);
    for (int i = 1; i < units.size(); i++) {
      if (address(units.get(i)) < address(units.get(i - 1))) {
        steps.add(new Step(units.get(i - 1), units.get(i)));
      }
    }
    if (!steps.isEmpty()) {
      report(site, steps, context);
    }
  }

  /** Two units of which the later one has the lower address. */
  private record Step(Unit before, Unit unit) {}

  /** The units whose addresses count: those that no other rule wants changed, and that are read. */
  private static List<Unit> numbered(Site site, RuleContext context) {
    ExcludedAddresses excluded = context.sitePolicy().keptFree().and(site.addressesOfEquipment());
    Map<Integer, Integer> times = new HashMap<>();
    site.units().forEach(unit -> times.merge(address(unit), 1, Integer::sum));
    boolean headAway = isHeadAway(site);
    List<Unit> numbered = new ArrayList<>();
    for (Unit unit : site.units()) {
      boolean explained =
          AddressValidity.isInvalid(unit, excluded)
              || times.getOrDefault(address(unit), 0) > 1
              || (headAway && isOfHead(unit));
      if (unit.address().isGiven() && !explained) {
        numbered.add(unit);
      }
    }
    return numbered;
  }

  /** Whether a rule on the head unit wants it, its place or its address changed. */
  private static boolean isHeadAway(Site site) {
    Unit head = site.head();
    return head == null
        || !head.isSameItemAs(site.units().get(0))
        || !head.address().is(BusAddress.HEAD);
  }

  /** Without a head unit, the one at its address is likely to become it. */
  private static boolean isOfHead(Unit unit) {
    return unit.isHead() || unit.address().is(BusAddress.HEAD);
  }

  private static int address(Unit unit) {
    return unit.address().or(0);
  }

  private static void report(Site site, List<Step> steps, RuleContext context) {
    Step first = steps.get(0);
    int others = steps.size() - 1;
    int higher = address(first.before());
    Finding finding =
        context
            .finding(
                first.unit().address().place(),
                new Message(
                    "address "
                        + address(first.unit())
                        + " comes after address "
                        + higher
                        + " on the chain"
                        + (others == 0
                            ? ""
                            : others == 1
                                ? "; it happens once more further on"
                                : "; it happens " + others + " times more further on"),
                    "people find units along the cable by number",
                    context.isLive()
                        ? "leave live units as they are and label each with its address, or renumber"
                            + " them as the goal changes says"
                        : "renumber them in chain order"))
            .aboutItems(ChainItem.names(steps.stream().map(Step::unit).toList()))
            .related(
                first.before().address().place().region(),
                "address " + higher + " is used here, by " + first.before().called())
            .fixedBy(Renumbering.of(site, context));
    for (Step other : steps.subList(1, steps.size())) {
      finding =
          finding.related(
              other.unit().address().place().region(),
              "address "
                  + address(other.unit())
                  + " comes after address "
                  + address(other.before()));
    }
    context.report(context.isLive() ? finding.at(Level.NOTE) : finding);
  }
}
