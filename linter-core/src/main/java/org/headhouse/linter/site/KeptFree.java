package org.headhouse.linter.site;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The addresses that a line keeps free for equipment other than its units. Whoever hands out an
 * address, for good or for a moment, passes these over.
 */
public record KeptFree(List<AddressRange> ranges) {
  /** No address is kept free. */
  public static final KeptFree NONE = new KeptFree(List.of());

  private static final int HIGHEST = 255;

  public KeptFree {
    ranges = List.copyOf(ranges);
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

  /** The lowest address above another one that a unit can have, as far as this tells. */
  public int nextOther(int address) {
    int next = address + 1;
    while (contains(next)) {
      next++;
    }
    return next;
  }

  /** The addresses 1 to 255 that units can have, from the lowest on. */
  public IntStream others() {
    return IntStream.rangeClosed(1, HIGHEST).filter(address -> !contains(address));
  }
}
