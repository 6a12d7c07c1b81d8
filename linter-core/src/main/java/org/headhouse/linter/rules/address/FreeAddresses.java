package org.headhouse.linter.rules.address;

import java.util.HashSet;
import java.util.Set;
import org.headhouse.linter.site.Site;

/** Hands out the addresses from 1 on that no unit of a site has. */
final class FreeAddresses {
  private final Set<Integer> taken = new HashSet<>();
  private int last;

  private FreeAddresses() {}

  static FreeAddresses of(Site site) {
    FreeAddresses free = new FreeAddresses();
    site.units().forEach(unit -> unit.address().optional().ifPresent(free.taken::add));
    return free;
  }

  /** The lowest address that nobody has and that was not handed out before. */
  int next() {
    do {
      last++;
    } while (taken.contains(last));
    return last;
  }
}
