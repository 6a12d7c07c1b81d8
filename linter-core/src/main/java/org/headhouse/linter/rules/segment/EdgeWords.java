package org.headhouse.linter.rules.segment;

import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentRinging;
import org.headhouse.linter.figures.Shown;

/** What a reflection does on a segment, beside the result that reports its cause. */
public final class EdgeWords {
  private EdgeWords() {}

  /**
   * A clause to follow the reason: {@code " (computed: harmless at 9600 bit/s, settled after 3.1
   * µs, before the middle of a bit of 104 µs)"}; empty where that cannot be computed.
   */
  public static String of(SegmentLine line) {
    SegmentRinging ringing = ComputedSegment.of(line) == null ? null : line.ringing();
    Double bit = ringing == null ? null : ringing.bitSeconds();
    if (ringing == null || bit == null) {
      return "";
    }
    double settled = ringing.settling().seconds();
    boolean harmless = settled <= SegmentRinging.middleSeconds(bit);
    String after = Double.isFinite(settled) ? " after " + Shown.micros(settled) : " at no time";
    String middle = " the middle of a bit of " + Shown.micros(bit);
    return harmless
        ? " (computed: harmless at "
            + ringing.baud()
            + " bit/s, settled"
            + after
            + ", before"
            + middle
            + ")"
        : " (computed: not harmless at "
            + ringing.baud()
            + " bit/s, settled"
            + (Double.isFinite(settled) ? " only" : "")
            + after
            + ", and a receiver reads"
            + middle
            + ")";
  }
}
