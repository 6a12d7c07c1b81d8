package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.Measure;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.CableSpread;
import org.headhouse.linter.line.Tolerances;
import org.headhouse.linter.line.Wire;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Length;
import org.jspecify.annotations.Nullable;

/**
 * A run of cable between two items, as it is tested before it is landed.
 *
 * @param length as the file has it, or that it is not known
 * @param loop the resistance of its two conductors in series, from winter to summer; or that it is
 *     not known
 */
record RunRow(String from, String to, String length, String loop) {
  private static final String NOT_KNOWN = "not known";

  static List<RunRow> of(List<SegmentLine> segments, Measure measure, Tolerances tolerances) {
    List<RunRow> runs = new ArrayList<>();
    for (SegmentLine segment : segments) {
      List<ChainItem> items = segment.segment().items();
      for (int i = 0; i + 1 < items.size(); i++) {
        Length length = items.get(i).cableToNext().orNull();
        runs.add(
            new RunRow(
                PlainText.name(items.get(i)),
                PlainText.name(items.get(i + 1)),
                length == null ? NOT_KNOWN : measure.length(length.metres()),
                loop(segment.wire(), length, tolerances)));
      }
    }
    return runs;
  }

  private static String loop(@Nullable Wire wire, @Nullable Length length, Tolerances tolerances) {
    if (wire == null || length == null) {
      return NOT_KNOWN;
    }
    CableSpread spread = CableSpread.ofReadings(wire, null, tolerances);
    double conductors = 2 * length.metres();
    return Shown.ohms(conductors * spread.leastOhmsPerMetre())
        + " to "
        + Shown.ohms(conductors * spread.greatestOhmsPerMetre());
  }
}
