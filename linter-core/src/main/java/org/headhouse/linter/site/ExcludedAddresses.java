package org.headhouse.linter.site;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The addresses that a line keeps free for equipment other than its units. Whoever hands out an
 * address, for good or for a moment, passes these over.
 */
public record ExcludedAddresses(List<AddressRange> ranges) {
  /** No address is kept free. */
  public static final ExcludedAddresses NONE = new ExcludedAddresses(List.of());

  public ExcludedAddresses {
    ranges = List.copyOf(ranges);
  }

  /** These addresses and some others. */
  public ExcludedAddresses and(Collection<Integer> addresses) {
    if (addresses.isEmpty()) {
      return this;
    }
    List<AddressRange> all = new ArrayList<>(ranges);
    addresses.forEach(address -> all.add(new AddressRange(address, address)));
    return new ExcludedAddresses(all);
  }

  /** Whether no address is kept free, as on most lines. */
  public boolean isNone() {
    return ranges.isEmpty();
  }

  /** Whether an address is kept free. */
  public boolean contains(int address) {
    return !isNone() && rangeOf(address).isPresent();
  }

  /** The range that an address is kept free by. */
  public Optional<AddressRange> rangeOf(int address) {
    return ranges.stream().filter(range -> range.contains(address)).findFirst();
  }

  /** The lowest address above another one that a unit can have, as far as is known here. */
  public int nextOther(int address) {
    int next = address + 1;
    while (contains(next)) {
      next++;
    }
    return next;
  }

  /** The addresses that units can have, from the lowest on, reserved ones included. */
  public IntStream others() {
    return BusAddress.SETTABLE.addresses().filter(address -> !contains(address));
  }
}
