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

/** {@code address.reserved}: MODBUS over Serial Line V1.02 §2.2. */
public final class AddressReserved implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "address.reserved", "No unit has address 0 or an address from 248 to 255.", Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    for (Unit unit : site.units()) {
      Integer address = unit.address().orNull();
      if (address != null && BusAddress.isReserved(address)) {
        boolean allowedByType = unit.type().addresses().contains(address);
        Finding finding =
            context
                .finding(
                    unit.address().place(),
                    message(
                        unit,
                        address,
                        ProposedAddresses.of(site, context.sitePolicy().keptFree()).of(unit)))
                .fixedBy(Renumbering.of(site, context.sitePolicy().keptFree()));
        context.report(allowedByType ? finding.at(Level.WARNING) : finding);
      }
    }
  }

  private static Message message(Unit unit, int address, int free) {
    String reason =
        address == BusAddress.BROADCAST
            ? "0 is the address of messages to all units"
            : "the Modbus standard keeps 248 to 255 for itself";
    return new Message(
        unit.called() + " has the reserved address " + address,
        reason,
        "give " + unit.called() + " " + inWords(free));
  }

  /** What to give a unit: a free address, or another line where none is left. */
  static String inWords(int free) {
    return BusAddress.isReserved(free) ? "a line of its own" : "address " + free;
  }
}
