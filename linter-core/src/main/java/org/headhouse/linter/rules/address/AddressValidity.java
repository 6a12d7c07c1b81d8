package org.headhouse.linter.rules.address;

import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Unit;

/**
 * Addresses that a unit must give up. Rules of their own report them, so gaps and order are judged
 * without them.
 */
final class AddressValidity {
  private AddressValidity() {}

  static boolean isInvalid(Unit unit, ExcludedAddresses keptFree) {
    return isInvalid(unit) || keptFree.contains(unit.address().or(0));
  }

  /** Whether the unit itself cannot be set to its address, or no unit may. */
  static boolean isInvalid(Unit unit) {
    int address = unit.address().or(0);
    return BusAddress.isReserved(address) || !unit.type().addresses().contains(address);
  }
}
