package org.headhouse.linter.site;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The addresses that a line keeps free for equipment other than its units. Whoever hands out an
 * address, for good or for a moment, passes these over.
 *
 * @param ranges from the lowest on; none overlaps another
 */
public record ExcludedAddresses(List<AddressRange> ranges) {
  /** No address is kept free. */
  public static final ExcludedAddresses NONE = new ExcludedAddresses(List.of());

  public ExcludedAddresses {
    ranges = merged(ranges);
  }

  /** A policy may name an address in many ranges, and each address is looked up for each unit. */
  private static List<AddressRange> merged(List<AddressRange> written) {
    List<AddressRange> merged = new ArrayList<>();
    for (AddressRange next :
        written.stream().sorted(Comparator.comparingInt(AddressRange::from)).toList()) {
      AddressRange last = merged.isEmpty() ? null : merged.get(merged.size() - 1);
      if (last != null && last.contains(next.from())) {
        int to = Math.max(last.to(), next.to());
        merged.set(merged.size() - 1, new AddressRange(last.from(), to));
      } else {
        merged.add(next);
      }
    }
    return List.copyOf(merged);
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
