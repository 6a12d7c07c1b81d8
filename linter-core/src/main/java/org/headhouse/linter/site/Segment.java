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

  /** The end towards the head unit. */
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

  /** The termination of an item on its side of this segment. */
  public Setting<Termination> termination(ChainItem item) {
    if (item instanceof Repeater repeater) {
      return repeater.isSameItemAs(first()) && !repeater.isSameItemAs(last())
          ? repeater.terminationOut()
          : repeater.terminationIn();
    }
    return ((Unit) item).termination();
  }
}
