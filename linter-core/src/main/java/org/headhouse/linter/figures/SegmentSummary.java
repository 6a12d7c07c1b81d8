package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.stability.Internal;
import org.jspecify.annotations.Nullable;

/**
 * The figures of one segment of a site.
 *
 * @param items the names in the order of the chain
 * @param lengthMetres null where a length is not known
 * @param unitLoads the sum over all items
 * @param figures null where a part of what they need is not known
 * @param worst the weakest at the worst corner of all parts; null like the figures
 * @param accepted what a meter may show; null like the figures
 * @param driverLoadOhms what each item works into while it sends, at 20 °C; null like the figures
 * @param edges how long they ring; null like the figures, and where the signal is too weak anyway
 * @param terminators those with a capacitor, in the order of the chain
 */
public record SegmentSummary(
    List<String> items,
    @Nullable Double lengthMetres,
    double unitLoads,
    @Nullable SegmentFigures figures,
    @Nullable WorstFigures worst,
    @Nullable AcceptedFigures accepted,
    @Nullable List<Double> driverLoadOhms,
    @Nullable EdgeFigures edges,
    List<CapacitorTerminator> terminators) {

  @Internal
  public SegmentSummary {
    items = List.copyOf(items);
    driverLoadOhms = driverLoadOhms == null ? null : List.copyOf(driverLoadOhms);
    terminators = List.copyOf(terminators);
  }

  static SegmentSummary of(SegmentLine line) {
    SegmentNetwork network = line.network();
    return new SegmentSummary(
        line.segment().items().stream().map(SegmentSummary::name).toList(),
        line.lengthMetres(),
        line.unitLoads(),
        line.figures(),
        network == null ? null : WorstFigures.of(network),
        network == null ? null : AcceptedFigures.of(line),
        network == null ? null : network.driverLoads(),
        EdgeFigures.of(line),
        CapacitorTerminator.of(line));
  }

  private static String name(ChainItem item) {
    return item.name().or("item " + (item.index() + 1));
  }
}
