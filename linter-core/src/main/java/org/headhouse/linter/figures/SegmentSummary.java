package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.site.ChainItem;
import org.jspecify.annotations.Nullable;

/**
 * The figures of one segment of a site.
 *
 * @param items the names in the order of the chain
 * @param lengthMetres null where a length is not known
 * @param unitLoads the sum over all items
 * @param figures null where a part of what they need is not known
 */
public record SegmentSummary(
    List<String> items,
    @Nullable Double lengthMetres,
    double unitLoads,
    @Nullable SegmentFigures figures) {

  public SegmentSummary {
    items = List.copyOf(items);
  }

  static SegmentSummary of(SegmentLine line) {
    return new SegmentSummary(
        line.segment().items().stream().map(SegmentSummary::name).toList(),
        line.lengthMetres(),
        line.unitLoads(),
        line.figures());
  }

  private static String name(ChainItem item) {
    return item.name().or("item " + (item.index() + 1));
  }
}
