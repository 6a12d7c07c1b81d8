package org.headhouse.linter.site;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.stability.Internal;

/**
 * A cable of the line, from an item of the chain to the next, or from the tap of an item to the
 * item itself.
 *
 * @param number along the chain, from 1; the cable of a branch comes before the one that goes on
 * @param to the same item for a branch
 */
@Internal
public record CableRun(
    int number, ChainItem from, ChainItem to, boolean isBranch, Setting<Length> length) {

  /** All cables in the order of their numbers. */
  public static List<CableRun> of(Site site) {
    List<CableRun> runs = new ArrayList<>();
    List<ChainItem> items = site.items();
    for (int i = 0; i < items.size(); i++) {
      ChainItem item = items.get(i);
      Setting<Length> stub = item.connection(Side.IN).stub();
      if (!stub.isMissing()) {
        runs.add(new CableRun(runs.size() + 1, item, item, true, stub));
      }
      if (i + 1 < items.size()) {
        runs.add(new CableRun(runs.size() + 1, item, items.get(i + 1), false, item.cableToNext()));
      }
    }
    return runs;
  }
}
