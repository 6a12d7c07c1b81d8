package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Converter;
import org.headhouse.linter.site.Site;

/**
 * An item whose supply is off while the pair is measured.
 *
 * @param feeds what else can feed the pair there; empty where that is its supply alone
 */
record SupplyRow(String name, String kind, String feeds) {

  static List<SupplyRow> of(Site site) {
    return site.items().stream().map(SupplyRow::of).toList();
  }

  private static SupplyRow of(ChainItem item) {
    String kind = item.kind().word();
    return new SupplyRow(
        PlainText.name(item),
        item.address().optional().map(address -> kind + ", address " + address).orElse(kind),
        item instanceof Converter ? "computer off, its lead unplugged" : "");
  }
}
