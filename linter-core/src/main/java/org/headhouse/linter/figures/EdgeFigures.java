package org.headhouse.linter.figures;

import org.jspecify.annotations.Nullable;

/**
 * How long the edges of a segment ring.
 *
 * @param settledSeconds after it begins to arrive an edge has settled at every receiver, at most
 * @param from the index of the item whose edge rings longest; null where the bound is not followed
 *     edge by edge
 * @param to the index of the item that receives it so; null likewise
 * @param bitSeconds how long a bit is; null where the rate is not known
 */
public record EdgeFigures(
    double settledSeconds,
    @Nullable Integer from,
    @Nullable Integer to,
    @Nullable Double bitSeconds) {

  /**
   * Null where nothing is known of a part that it needs, or a receiver gets no more than it needs.
   */
  static @Nullable EdgeFigures of(SegmentLine line) {
    SegmentRinging ringing = line.ringing();
    if (ringing == null || !Double.isFinite(ringing.settling().seconds())) {
      return null;
    }
    var worst = ringing.settling().worst();
    return new EdgeFigures(
        ringing.settling().seconds(),
        worst == null ? null : worst.sender(),
        worst == null ? null : worst.receiver(),
        ringing.bitSeconds());
  }
}
