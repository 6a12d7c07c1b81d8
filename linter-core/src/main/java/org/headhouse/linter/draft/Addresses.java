package org.headhouse.linter.draft;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.headhouse.linter.site.BusAddress;
import org.headhouse.linter.site.ExcludedAddresses;
import org.headhouse.linter.site.ItemKind;

/**
 * Hands out addresses along the chain where a list has none. One that has addresses says what is
 * set on site, and keeps them, faults and all.
 */
final class Addresses {
  private Addresses() {}

  /** The chain with an address for each unit; whole only where no fault is reported. */
  static ListedChain of(ListedChain chain, ExcludedAddresses keptFree, Faults faults) {
    if (chain.hasAddresses()) {
      return chain;
    }
    requireEquipmentToHaveOne(chain, faults);
    Set<String> taken =
        chain.items().stream()
            .map(item -> item.value(Column.ADDRESS))
            .filter(address -> address != null)
            .collect(Collectors.toSet());
    List<String> free =
        BusAddress.STANDARD
            .addresses()
            .filter(address -> !keptFree.contains(address))
            .mapToObj(String::valueOf)
            .filter(address -> !taken.contains(address))
            .toList();
    List<ListedItem> units = chain.items().stream().filter(ListedItem::isUnit).toList();
    if (units.size() > free.size()) {
      int kept = BusAddress.STANDARD.to() - free.size();
      faults.add(
          units.get(free.size()).start(),
          "the list has " + units.size() + " units",
          "the addresses of a line end at "
              + BusAddress.STANDARD.to()
              + (kept == 0 ? "" : ", and " + kept + " of them are kept free"),
          "divide the units into several lines, each with a head unit of its own");
      return chain;
    }
    Iterator<String> next = free.iterator();
    List<ListedItem> items = new ArrayList<>();
    for (ListedItem item : chain.items()) {
      items.add(item.isUnit() ? item.with(Column.ADDRESS, next.next()) : item);
    }
    return new ListedChain(items, chain.columns(), chain.unread());
  }

  private static void requireEquipmentToHaveOne(ListedChain chain, Faults faults) {
    for (ListedItem item : chain.items()) {
      if (item.kind() == ItemKind.EQUIPMENT && item.value(Column.ADDRESS) == null) {
        faults.add(
            item.start(),
            "the equipment \"" + item.name() + "\" has no address in the list",
            "a unit could get the same one, and both would answer at once",
            "read it at the device, and write it into a column address");
      }
    }
  }
}
