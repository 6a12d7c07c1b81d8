package org.headhouse.linter.figures;

import java.util.List;
import org.headhouse.linter.line.ReadingRange;
import org.jspecify.annotations.Nullable;

/**
 * What a meter may show at every item of a sound segment, over the range of tolerances and
 * temperatures and with its own error.
 *
 * @param pairOhms between D1 and D0, all supplies off; null where no terminator conducts steadily
 * @param idleVolts D1 − D0 while nobody sends; null where no bias holds the line
 */
public record AcceptedFigures(
    @Nullable List<ReadingRange> pairOhms, @Nullable List<ReadingRange> idleVolts) {

  public AcceptedFigures {
    pairOhms = pairOhms == null ? null : List.copyOf(pairOhms);
    idleVolts = idleVolts == null ? null : List.copyOf(idleVolts);
  }

  static AcceptedFigures of(SegmentLine line) {
    SegmentReadings readings = line.readings();
    return new AcceptedFigures(
        line.conductsSteadily() ? readings.pairOhms() : null,
        line.holdingBiases().isEmpty() ? null : readings.idleVolts());
  }
}
