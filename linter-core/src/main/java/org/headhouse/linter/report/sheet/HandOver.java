package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.headhouse.linter.site.AddressHole;
import org.headhouse.linter.site.AddressRange;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.Link;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Supervision;
import org.headhouse.linter.site.SuppressionEntry;
import org.headhouse.linter.site.Unit;

/**
 * The handover to the operator of the site.
 *
 * @param link how the supervising software reaches the units
 * @param listed whether the zones are those of the file, and not simply all units
 * @param above the addresses above the highest in use that are free; empty where none is left
 * @param free the addresses below it that no unit has and nobody holds; empty for none
 * @param held the addresses below it that the site holds, with the reason
 * @param keptFree the addresses that no unit may have; empty for none
 * @param next the address of the next unit, above all others; empty where there is none left
 * @param delivered types that are delivered with an address set
 */
record HandOver(
    String link,
    boolean listed,
    List<Zone> zones,
    String above,
    String free,
    List<String> held,
    String keptFree,
    String next,
    List<String> delivered) {

  HandOver {
    zones = List.copyOf(zones);
    held = List.copyOf(held);
    delivered = List.copyOf(delivered);
  }

  /** Whether a zone is reached over Ethernet. */
  boolean hasEthernet() {
    return zones.stream().anyMatch(zone -> !zone.ip().isEmpty());
  }

  static HandOver of(Site site, ExcludedAddresses keptFree, LocalDate today) {
    Supervision supervision = site.supervision().orNull();
    ExcludedAddresses excluded = keptFree.and(site.addressesOfEquipment());
    int highest =
        site.units().stream()
            .map(unit -> unit.address().or(BusAddress.BROADCAST))
            .filter(address -> !BusAddress.isReserved(address))
            .reduce(BusAddress.BROADCAST, Math::max);
    List<Integer> above =
        IntStream.rangeClosed(highest + 1, BusAddress.STANDARD.to())
            .filter(address -> !excluded.contains(address))
            .boxed()
            .toList();
    List<Integer> free = new ArrayList<>();
    List<String> held = new ArrayList<>();
    for (AddressHole hole : AddressHole.of(site, excluded)) {
      SuppressionEntry entry = hole.heldBy(site, today);
      if (entry == null) {
        free.addAll(hole.addresses());
      } else {
        held.add(ranges(hole.addresses()) + ": " + reason(entry));
      }
    }
    return new HandOver(
        supervision == null ? "" : supervision.link().optional().map(HandOver::words).orElse(""),
        supervision != null && supervision.zones().isGiven(),
        Zone.of(site),
        ranges(above),
        ranges(free.stream().filter(address -> !BusAddress.isReserved(address)).toList()),
        held,
        keptFree.ranges().stream().map(AddressRange::inWords).collect(Collectors.joining(", ")),
        above.isEmpty() ? "" : String.valueOf(above.get(0)),
        delivered(site));
  }

  private static String words(Link link) {
    return switch (link) {
      case SERIAL -> "over the serial line";
      case ETHERNET -> "over Ethernet";
      case THROUGH_HEAD -> "through the head unit";
    };
  }

  private static String reason(SuppressionEntry entry) {
    return PlainText.sentence(entry.justification().or(""))
        + entry.until().optional().map(day -> " (until " + day + ")").orElse("");
  }

  /** {@code 3, 5 to 7}, from addresses in their order. */
  private static String ranges(List<Integer> addresses) {
    List<String> ranges = new ArrayList<>();
    for (int i = 0; i < addresses.size(); i++) {
      int from = addresses.get(i);
      while (i + 1 < addresses.size() && addresses.get(i + 1) == addresses.get(i) + 1) {
        i++;
      }
      ranges.add(new AddressRange(from, addresses.get(i)).inWords());
    }
    return String.join(", ", ranges);
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
