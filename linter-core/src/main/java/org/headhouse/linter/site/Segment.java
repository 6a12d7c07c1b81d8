package org.headhouse.linter.site;

import java.util.List;

/**
 * An electrically separate stretch of the chain: from the start or a repeater to the next repeater
 * or the end, both included.
 *
 * @param items in the order of the chain; a repeater stands in two segments
 */
public record Segment(List<ChainItem> items) {

  public Segment {
    items = List.copyOf(items);
    if (items.isEmpty()) {
      throw new IllegalArgumentException("a segment without an item");
    }
  }

  /** The end towards the start of the chain. */
  public ChainItem first() {
    return items.get(0);
  }

  /** The far end. */
  public ChainItem last() {
    return items.get(items.size() - 1);
  }

  /** Whether an item of this chain stands at either end of it. */
  public boolean endsAt(ChainItem item) {
    return item.isSameItemAs(first()) || item.isSameItemAs(last());
  }

  /** Whether an item of the chain is in it. */
  public boolean contains(ChainItem item) {
    int place = item.index() - first().index();
    return place >= 0 && place < items.size() && items.get(place).isSameItemAs(item);
  }

  /** The side of an item that faces this segment. */
  public Side side(ChainItem item) {
    return item.isSameItemAs(first()) && !item.isSameItemAs(last()) ? Side.OUT : Side.IN;
  }

  /** How an item is connected to the pair of this segment. */
  public Connection connection(ChainItem item) {
    return item.connection(side(item));
  }

  /** The termination of an item on its side of this segment. */
  public Setting<Termination> termination(ChainItem item) {
    return connection(item).termination();
  }
}
