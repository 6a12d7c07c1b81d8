package org.headhouse.linter.rules.address;

import org.headhouse.linter.result.Finding;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Message;
import org.headhouse.linter.rule.RuleContext;
import org.headhouse.linter.rule.RuleDescriptor;
import org.headhouse.linter.rule.SiteRule;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.source.SourceText;

/** {@code address.beyond-limit}. */
public final class AddressBeyondLimit implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
              "address.beyond-limit",
              "No address is above what the type of device can be set to.",
              Level.ERROR)
          .yieldingTo("address.reserved");

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      Integer address = unit.address().orNull();
      boolean limited = unit.type().addressLimitSetting().isGiven();
      if (address != null
          && limited
          && address > unit.type().addressLimit()
          && !BusAddress.isReserved(address)) {
        report(
            site,
            unit,
            address,
            ProposedAddresses.of(site, context.sitePolicy().keptFree()).of(unit),
            context);
      }
    }
  }

  private static void report(Site site, Unit unit, int address, int free, RuleContext context) {
    int limit = unit.type().addressLimit();
    Finding finding =
        context
            .finding(
                unit.address().place(),
                new Message(
                    unit.called()
                        + " has address "
                        + address
                        + ", above the "
                        + limit
                        + " of its type",
                    "the device cannot be set to it",
                    free > limit
                        ? "exchange the address of " + unit.called() + " with that of another type"
                        : "give " + unit.called() + " address " + free))
            .fixedBy(Renumbering.of(site, context.sitePolicy().keptFree()));
    SourceText types = context.deviceTypes().source();
    context.report(
        types == null
            ? finding
            : finding.related(
                types,
                unit.type().addressLimitSetting().place().region(),
                "the limit of the type is written here"));
  }
}
