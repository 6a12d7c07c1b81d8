package org.headhouse.linter.rules.address;

import java.util.List;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.Parameter;
import org.headhouse.linter.rule.ParameterType;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.AddressRange;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;

/**
 * {@code address.kept-free}: silent until the policy keeps something free. What it keeps free,
 * every other rule, fix, draft and plan passes over as well.
 */
public final class AddressKeptFree implements SiteRule {
  /** The ranges of {@link SitePolicy#keptFree}. */
  public static final Parameter<List<AddressRange>> RANGES =
      new Parameter<>(
          "ranges",
          "the addresses that no unit gets; used wherever addresses are handed out",
          ParameterType.listOf(ParameterType.addresses()),
          "[]");

  /** What is known of the rule. */
  public static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "address.kept-free",
              "No unit has an address that the policy keeps free for other equipment.",
              Level.ERROR,
              RANGES)
          .yieldingTo("head.address", "address.reserved", "address.beyond-limit");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    if (context.sitePolicy().keptFree().isNone()) {
      return;
    }
    AddressRemedies remedies = new AddressRemedies(site, context);
    Unit head = site.head();
    for (Unit unit : site.units()) {
      Integer address = unit.address().orNull();
      // head.address, address.reserved and address.beyond-limit report the others.
      if (address != null && !unit.isSameItemAs(head) && !AddressValidity.isInvalid(unit)) {
        context
            .sitePolicy()
            .keptFree()
            .rangeOf(address)
            .ifPresent(range -> report(unit, range, remedies, context));
      }
    }
  }

  private static void report(
      Unit unit, AddressRange range, AddressRemedies remedies, RuleContext context) {
    context.report(
        context
            .finding(
                unit.address().place(),
                new Message(
                    unit.called()
                        + " has address "
                        + unit.address().or(0)
                        + ", but "
                        + (range.from() == range.to() ? "it is" : range.inWords() + " are")
                        + " kept free",
                    "addresses kept free belong to other equipment on the line, now or later",
                    remedy(unit, remedies.proposed())))
            .fixedBy(remedies.fix(unit)));
  }

  private static String remedy(Unit unit, ProposedAddresses free) {
    int address = free.of(unit);
    return address > unit.type().addressLimit() && !BusAddress.isReserved(address)
        ? "give "
            + unit.called()
            + " the address of a unit of another type, and give that unit address "
            + address
        : free.remedy(unit);
  }
}
