package org.headhouse.linter.change;

import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;

/** What an item of the chain is. */
public enum ItemKind {
  UNIT("unit"),
  REPEATER("repeater");

  private final String word;

  ItemKind(String word) {
    this.word = word;
  }

  static ItemKind of(ChainItem item) {
    return item instanceof Repeater ? REPEATER : UNIT;
  }

  /** The word as the file has it. */
  public String word() {
    return word;
  }
}
