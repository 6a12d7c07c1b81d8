package org.headhouse.linter.rules.address;

import java.util.Objects;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.jspecify.annotations.Nullable;

/** {@code address.order}: reported once, at the first unit that is out of order. */
public final class AddressOrder implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of("address.order", "Addresses rise along the chain.", Level.WARNING)
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
    ExcludedAddresses excluded = context.sitePolicy().keptFree().and(site.addressesOfEquipment());
    Unit highest = null;
    for (Unit unit : site.units()) {
      Integer address = unit.address().orNull();
      if (address == null) {
        return;
      }
      if (AddressValidity.isInvalid(unit, excluded)) {
        continue;
      }
      boolean inOrder = highest == null || address >= highest.address().or(0);
      if (!inOrder && !isExplained(site, unit)) {
        report(site, unit, address, highest, context);
        return;
      }
      highest = inOrder ? unit : highest;
    }
  }

  /** Whether {@code address.duplicate} or a rule on the head unit reports the cause. */
  private static boolean isExplained(Site site, Unit unit) {
    long same = site.units().stream().filter(other -> isSame(other, unit)).count();
    Unit head = site.head();
    boolean headAway =
        head == null
            || !head.isSameItemAs(site.units().get(0))
            || !head.address().is(BusAddress.HEAD);
    return same > 1 || headAway;
  }

  private static boolean isSame(Unit one, Unit other) {
    return Objects.equals(one.address().orNull(), other.address().orNull());
  }

  private static void report(
      Site site, Unit unit, int address, @Nullable Unit before, RuleContext context) {
    if (before == null) {
      return;
    }
    int higher = before.address().or(0);
    context.report(
        context
            .finding(
                unit.address().place(),
                new Message(
                    "address " + address + " stands behind address " + higher,
                    "people look for units along the cable by their numbers",
                    "number the units in the order of the chain"))
            .related(
                before.address().place().region(),
                "address " + higher + " is used here, by " + before.called())
            .fixedBy(Renumbering.of(site, context.sitePolicy().keptFree())));
  }
}
