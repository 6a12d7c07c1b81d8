package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Site;

/**
 * A label for a unit, or for another item of the chain.
 *
 * @param address empty for an item that has none
 */
record ItemLabel(String name, String kind, String address) {

  static List<ItemLabel> of(Site site) {
    return site.items().stream().map(ItemLabel::of).toList();
  }

  private static ItemLabel of(ChainItem item) {
    return new ItemLabel(
        PlainText.wholeName(item),
        PlainText.word(item.kind()),
        item.address()
            .optional()
            .map(address -> "Address " + address)
            .orElse(hasAddress(item) ? "Address not known" : ""));
  }

  private static boolean hasAddress(ChainItem item) {
    return switch (item.kind()) {
      case UNIT, EQUIPMENT -> true;
      case REPEATER, CONVERTER -> false;
    };
  }
}
