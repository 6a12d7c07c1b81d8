package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Segment;
import org.headhouse.linter.site.Unit;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * At which items of a segment a meter has to be held, for the rules, the sheets and the figures:
 * common practice, no source.
 */
@Internal
public final class MeasuredItems {
  private MeasuredItems() {}

  /**
   * The head unit, or the first item of a segment without it; then the end that is away from it.
   *
   * @return indices of items of the segment, from 0; one where there is only one item
   */
  public static List<Integer> of(Segment segment, @Nullable Unit head) {
    int near = near(segment, head);
    int last = segment.items().size() - 1;
    if (last == 0) {
      return List.of(near);
    }
    return List.of(near, near == last ? 0 : last);
  }

  /** The index of the head unit, or 0 in a segment without it. */
  static int near(Segment segment, @Nullable Unit head) {
    List<ChainItem> items = segment.items();
    for (int index = 0; index < items.size(); index++) {
      if (items.get(index).isSameItemAs(head)) {
        return index;
      }
    }
    return 0;
  }
}
