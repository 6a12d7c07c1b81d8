package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import org.headhouse.linter.site.AddressRange;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.Unit;

/**
 * The handover to the operator of the site.
 *
 * @param link how the supervising software reaches the units
 * @param listed whether the zones are those of the file, and not simply all units
 * @param spare the addresses that are still free
 * @param keptFree the addresses that no unit may have; empty for none
 * @param next the address of the next unit; empty where there is none left
 * @param delivered types that are delivered with an address set
 */
record HandOver(
    String link,
    boolean listed,
    List<Zone> zones,
    String spare,
    String keptFree,
    String next,
    List<String> delivered) {

  HandOver {
    zones = List.copyOf(zones);
    delivered = List.copyOf(delivered);
  }

  static HandOver of(Site site, ExcludedAddresses keptFree) {
    Supervision supervision = site.supervision().orNull();
    TreeSet<Integer> used = new TreeSet<>();
    site.units().forEach(unit -> unit.address().optional().ifPresent(used::add));
    used.addAll(site.addressesOfEquipment());
    List<String> spare = spare(address -> used.contains(address) || keptFree.contains(address));
    return new HandOver(
        supervision == null ? "" : supervision.link().optional().map(HandOver::words).orElse(""),
        supervision != null && supervision.zones().isGiven(),
        Zone.of(site),
        spare.isEmpty() ? "none" : String.join(", ", spare),
        keptFree.ranges().stream().map(AddressRange::inWords).collect(Collectors.joining(", ")),
        spare.isEmpty() ? "" : spare.get(0).split(" ", 2)[0],
        delivered(site));
  }

  private static String words(Link link) {
    return switch (link) {
      case SERIAL -> "over the serial line";
      case ETHERNET -> "over Ethernet";
      case THROUGH_HEAD -> "through the head unit";
    };
  }

  private static List<String> spare(IntPredicate used) {
    List<String> ranges = new ArrayList<>();
    int highest = BusAddress.STANDARD.to();
    int start = BusAddress.STANDARD.from();
    for (int address = start; address <= highest + 1; address++) {
      if (address > highest || used.test(address)) {
        if (start < address) {
          ranges.add(start == address - 1 ? "" + start : start + " to " + (address - 1));
        }
        start = address + 1;
      }
    }
    return ranges;
  }

  private static List<String> delivered(Site site) {
    Set<String> words = new TreeSet<>();
    for (Unit unit : site.units()) {
      unit.type()
          .defaultAddress()
          .optional()
          .ifPresent(
              address ->
                  words.add(PlainText.name(unit.deviceType().or("")) + " with address " + address));
    }
    return List.copyOf(words);
  }
}
