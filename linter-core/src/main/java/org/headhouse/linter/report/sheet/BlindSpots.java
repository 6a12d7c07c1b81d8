package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.line.PairMeasurement;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Resistance;

/**
 * Which faults of the terminators of a segment an acceptable reading does not exclude.
 *
 * @param at the index of the item that is measured at
 * @param extra the items at which one terminator more would go unseen
 * @param missing the items whose terminator may be missing
 */
record BlindSpots(SegmentLine line, int at, BitSet extra, BitSet missing) {

  /** Those of the line as it is. */
  static BlindSpots of(SegmentLine line, PairMeasurement measurement) {
    BitSet missing = new BitSet();
    for (int item = 0; item < size(line); item++) {
      missing.set(
          item, line.steadyTerminator(item(line, item)) != null && measurement.hidesMissing(item));
    }
    return new BlindSpots(line, measurement.at(), extra(line, measurement), missing);
  }

  /** Those with all terminators taken off. */
  static BlindSpots withoutTerminators(SegmentLine line, PairMeasurement measurement) {
    return new BlindSpots(line, measurement.at(), extra(line, measurement), new BitSet());
  }

  private static BitSet extra(SegmentLine line, PairMeasurement measurement) {
    double ohms = mildestOhms(line);
    BitSet extra = new BitSet();
    for (int item = 0; item < size(line); item++) {
      extra.set(item, measurement.hidesExtra(item, ohms));
    }
    return extra;
  }

  boolean isEmpty() {
    return extra.isEmpty() && missing.isEmpty();
  }

  /** What another reading does not exclude either. */
  BlindSpots and(BlindSpots other) {
    BitSet both = (BitSet) extra.clone();
    BitSet lost = (BitSet) missing.clone();
    both.and(other.extra);
    lost.and(other.missing);
    return new BlindSpots(line, at, both, lost);
  }

  /** A sentence; empty where everything would be seen. */
  String words() {
    List<String> faults = new ArrayList<>();
    if (!extra.isEmpty()) {
      faults.add("a third terminator " + places());
    }
    missing.stream()
        .mapToObj(item -> "that the terminator at " + name(item) + " is missing")
        .forEach(faults::add);
    return faults.isEmpty() ? "" : "Cannot show " + String.join(", nor ", faults) + ".";
  }

  /** On either side from the nearest one on. */
  private String places() {
    if (extra.get(at)) {
      return "anywhere";
    }
    int before = extra.previousSetBit(at);
    int after = extra.nextSetBit(at);
    List<String> places = new ArrayList<>();
    if (before >= 0) {
      places.add("at " + name(before) + (before > 0 ? " or before it" : ""));
    }
    if (after >= 0) {
      places.add("at " + name(after) + (after < size(line) - 1 ? " or beyond" : ""));
    }
    return String.join(", or ", places);
  }

  /** That of the line's own terminators which is seen the least; 0 without any. */
  private static double mildestOhms(SegmentLine line) {
    double mildest = 0;
    for (int item = 0; item < size(line); item++) {
      Resistance terminator = line.steadyTerminator(item(line, item));
      mildest = Math.max(mildest, terminator == null ? 0 : terminator.ohms());
    }
    return mildest;
  }

  private static ChainItem item(SegmentLine line, int index) {
    return line.segment().items().get(index);
  }

  private static int size(SegmentLine line) {
    return line.segment().items().size();
  }

  private String name(int item) {
    return PlainText.name(item(line, item));
  }
}
