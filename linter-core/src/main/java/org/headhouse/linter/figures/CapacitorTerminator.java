package org.headhouse.linter.figures;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.line.TerminatorTiming;
import org.headhouse.linter.site.Capacitance;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Resistance;
import org.headhouse.linter.site.Termination;
import org.jspecify.annotations.Nullable;

/**
 * A terminator with a capacitor, and the times that it has to do with.
 *
 * @param item its index in the segment
 * @param timing its time constant beside the bit and the round trip
 */
public record CapacitorTerminator(int item, TerminatorTiming timing) {

  /** Those of a segment; none where its rate or a length is not known. */
  static List<CapacitorTerminator> of(SegmentLine line) {
    List<CapacitorTerminator> all = new ArrayList<>(0);
    Integer baud = line.baud();
    Double metres = line.lengthMetres();
    List<ChainItem> items = line.segment().items();
    for (int i = 0; i < items.size() && baud != null && baud > 0 && metres != null; i++) {
      TerminatorTiming timing =
          timing(line, line.segment().termination(items.get(i)).orNull(), baud, metres);
      if (timing != null) {
        all.add(new CapacitorTerminator(i, timing));
      }
    }
    return all;
  }

  private static @Nullable TerminatorTiming timing(
      SegmentLine line, @Nullable Termination termination, int baud, double metres) {
    Resistance resistance = termination == null ? null : termination.resistance();
    Capacitance capacitance = termination == null ? null : termination.capacitance();
    return resistance == null
            || capacitance == null
            || resistance.ohms() <= 0
            || capacitance.farads() <= 0
        ? null
        : TerminatorTiming.of(
            resistance.ohms(), capacitance.farads(), baud, metres, line.velocityFactor());
  }
}
