package org.headhouse.linter.rules.address;

import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Unit;

/**
 * Tells addresses that a unit cannot keep. They are told by rules of their own, and what they do to
 * gaps and order says nothing.
 */
final class Settable {
  private Settable() {}

  static boolean isNot(Unit unit, ExcludedAddresses keptFree) {
    return isNot(unit) || keptFree.contains(unit.address().or(0));
  }

  /** Whether the unit itself cannot be set to its address, or no unit may. */
  static boolean isNot(Unit unit) {
    int address = unit.address().or(0);
    return BusAddress.isReserved(address) || !unit.type().addresses().contains(address);
  }
}
