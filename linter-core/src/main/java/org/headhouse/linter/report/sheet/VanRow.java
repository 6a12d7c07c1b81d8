package org.headhouse.linter.report.sheet;

import java.util.List;
import org.headhouse.linter.site.ChainItem;

/**
 * One item of the chain on the van sheet.
 *
 * @param signs the numbers of its signs in the diagram; empty for none
 * @param address empty where it has none, as a repeater
 * @param positive the mark of its terminal for D1
 * @param negative the mark of its terminal for D0
 * @param pair how the pair compares with the marks of the head unit
 * @param termination across the pair, and bias where it is fitted
 * @param open all that is still wrong here
 */
record VanRow(
    String name,
    String signs,
    String address,
    String positive,
    String negative,
    String pair,
    String common,
    String termination,
    List<OpenPoint> open) {

  VanRow {
    open = List.copyOf(open);
  }

  static VanRow of(ChainItem item, String signs, LandingRow landing, List<OpenPoint> open) {
    return new VanRow(
        landing.name(),
        signs,
        item.address().optional().map(String::valueOf).orElse(""),
        landing.positive(),
        landing.negative(),
        landing.pair(),
        landing.common(),
        landing.termination(),
        open);
  }
}
