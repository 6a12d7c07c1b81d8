package org.headhouse.linter.report.sheet;

import org.headhouse.linter.site.ChainItem;

/**
 * One item of the chain on the van sheet.
 *
 * @param address empty where it has none, as a repeater
 * @param positive the mark of its terminal for D1
 * @param negative the mark of its terminal for D0
 * @param pair how the pair compares with the marks of the head unit
 * @param termination across the pair, and bias where it is fitted
 */
record VanRow(
    String name,
    String address,
    String positive,
    String negative,
    String pair,
    String common,
    String termination) {

  static VanRow of(ChainItem item, LandingRow landing) {
    return new VanRow(
        landing.name(),
        item.address().optional().map(String::valueOf).orElse(""),
        landing.positive(),
        landing.negative(),
        landing.pair(),
        landing.common(),
        landing.termination());
  }
}
