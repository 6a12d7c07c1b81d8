package org.headhouse.linter.diagnosis;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.site.ChainItem;

/** How the items of a segment are called. */
final class ItemNames {
  private ItemNames() {}

  static List<String> of(SegmentLine line) {
    List<String> names = new ArrayList<>();
    for (ChainItem item : line.segment().items()) {
      names.add(of(item));
    }
    return names;
  }

  /** The name, or the place in the chain where there is none. */
  static String of(ChainItem item) {
    return item.name().or(item.called());
  }
}
