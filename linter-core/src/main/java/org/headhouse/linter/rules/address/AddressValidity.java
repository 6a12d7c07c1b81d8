package org.headhouse.linter.rules.address;

import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Unit;

/**
 * Addresses that an item must give up. Rules of their own report them, so gaps and order are judged
 * without them.
 */
final class AddressValidity {
  private AddressValidity() {}

  static boolean isInvalid(Unit unit, ExcludedAddresses keptFree) {
    return isInvalid(unit) || keptFree.contains(unit.address().or(0));
  }

  /** Whether the device itself cannot be set to its address, or no device may. */
  static boolean isInvalid(ChainItem item) {
    int address = item.address().or(0);
    return BusAddress.isReserved(address) || !item.type().addresses().contains(address);
  }
}
