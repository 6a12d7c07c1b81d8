package org.headhouse.linter.change;

import java.util.Comparator;
import java.util.List;

/**
 * The chain in both states.
 *
 * @param all the items of both, in the order of the work
 */
record ChainStates(Chain all, Chain before, Chain after) {

  static ChainStates of(List<TrackedItem> all) {
    return new ChainStates(
        new Chain(all),
        new Chain(
            all.stream()
                .filter(item -> item.before() != null)
                .sorted(Comparator.comparing(ChainStates::placeBefore))
                .toList()),
        new Chain(all.stream().filter(item -> item.after() != null).toList()));
  }

  private static int placeBefore(TrackedItem item) {
    return item.before() == null ? -1 : item.before().index();
  }
}
