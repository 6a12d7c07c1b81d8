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

/** {@code address.reserved}: MODBUS over Serial Line V1.02 §2.2. */
public final class AddressReserved implements SiteRule {
  private static final RuleDescriptor DESCRIPTOR =
      RuleDescriptor.of(
          "address.reserved",
          "No device has address 0 or an address from 248 to 255.",
          Level.ERROR);

  @Override
  public RuleDescriptor descriptor() {
    return DESCRIPTOR;
  }

  @Override
  public void check(Site site, RuleContext context) {
    AddressRemedies remedies = new AddressRemedies(site, context);
    for (ChainItem item : site.items()) {
      Integer address = item.address().orNull();
      if (address != null && BusAddress.isReserved(address)) {
        boolean allowedByType = item.type().addresses().contains(address);
        Finding finding =
            context
                .finding(item.address().place(), message(item, address, remedies.words(item)))
                .fixedBy(remedies.fix(item));
        context.report(allowedByType ? finding.at(Level.WARNING) : finding);
      }
    }
  }

  private static Message message(ChainItem item, int address, String remedy) {
    String reason =
        address == BusAddress.BROADCAST
            ? "Modbus uses 0 for broadcasts"
            : "the Modbus standard reserves 248 to 255";
    return new Message(item.called() + " has the reserved address " + address, reason, remedy);
  }
}
