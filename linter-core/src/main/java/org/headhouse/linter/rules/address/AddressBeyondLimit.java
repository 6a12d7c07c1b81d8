package org.headhouse.linter.rules.address;

import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.SourceText;

/** {@code address.beyond-limit}. */
public final class AddressBeyondLimit implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "address.beyond-limit",
              "No address is higher than the device type allows.",
              Level.ERROR)
          .yieldingTo("address.reserved");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    AddressRemedies remedies = new AddressRemedies(site, context);
    for (ChainItem item : site.items()) {
      Integer address = item.address().orNull();
      boolean limited = item.type().addressLimitSetting().isGiven();
      if (address != null
          && limited
          && address > item.type().addressLimit()
          && !BusAddress.isReserved(address)) {
        report(item, address, remedies, context);
      }
    }
  }

  private static void report(
      ChainItem item, int address, AddressRemedies remedies, RuleContext context) {
    int limit = item.type().addressLimit();
    Finding finding =
        context
            .finding(
                item.address().place(),
                new Message(
                    item.called()
                        + " has address "
                        + address
                        + "; its type allows at most "
                        + limit,
                    "the unit cannot be set to it",
                    item instanceof Unit unit && remedies.proposed().of(unit) > limit
                        ? "swap the address of "
                            + unit.called()
                            + " with that of a unit of another type"
                        : remedies.words(item)))
            .fixedBy(remedies.fix(item));
    SourceText types = context.deviceTypes().source();
    context.report(
        types == null
            ? finding
            : finding.related(
                types,
                item.type().addressLimitSetting().place().region(),
                "the limit of the type is here"));
  }
}
