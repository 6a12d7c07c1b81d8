package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.PairResistance;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.site.ChainItem;
import org.headhouse.linter.site.Repeater;
import org.jspecify.annotations.Nullable;

/**
 * One value to measure.
 *
 * @param state of the supply: the words that the step begins with
 * @param what and between which terminals
 * @param where the item whose terminals they are, and of a repeater the side
 * @param computed the range, or why there is none
 * @param accepted the same with the tolerance of parts and meter; empty where there is no range
 */
record Measurement(String state, String what, String where, String computed, String accepted) {
  private static final String OFF = "Power off, supply isolated and locked off";
  private static final String ON = "Power on, nobody sending";

  /** Whether it is measured with the power on. */
  boolean powered() {
    return state.equals(ON);
  }

  static List<Measurement> of(List<SegmentLine> segments, double tolerance) {
    List<Measurement> all = new ArrayList<>();
    for (SegmentLine segment : segments) {
      SegmentFigures figures = segment.hasFaultThatDistortsFigures() ? null : segment.figures();
      all.add(resistance(segment, figures, tolerance));
      int last = segment.segment().items().size() - 1;
      all.add(idle(segment, figures, 0, tolerance));
      if (last > 0) {
        all.add(idle(segment, figures, last, tolerance));
      }
    }
    return all;
  }

  private static Measurement resistance(
      SegmentLine segment, @Nullable SegmentFigures figures, double tolerance) {
    String what = "resistance between D1 and D0";
    String where = name(segment, figures == null ? 0 : segment.measuredAt());
    if (figures == null) {
      return new Measurement(OFF, what, where, missing(segment), "");
    }
    PairResistance pair = figures.pairResistance();
    return range(OFF, what, where, pair.lowOhms(), pair.highOhms(), tolerance, true);
  }

  private static Measurement idle(
      SegmentLine segment, @Nullable SegmentFigures figures, int item, double tolerance) {
    String what = "voltage of D1 against D0";
    String where = name(segment, item);
    List<Double> volts = figures == null ? null : figures.idleVolts();
    if (volts == null) {
      return new Measurement(
          ON, what, where, figures == null ? missing(segment) : "not defined: no bias", "");
    }
    return range(ON, what, where, volts.get(item), volts.get(item), tolerance, false);
  }

  private static Measurement range(
      String state,
      String what,
      String where,
      double low,
      double high,
      double tolerance,
      boolean ohms) {
    return new Measurement(
        state,
        what,
        where,
        between(shown(low, ohms), shown(high, ohms)),
        Double.isInfinite(low)
            ? ""
            : between(shown(low * (1 - tolerance), ohms), shown(high * (1 + tolerance), ohms)));
  }

  private static String shown(double value, boolean ohms) {
    return ohms ? Shown.ohms(value) : Shown.volts(value);
  }

  private static String between(String low, String high) {
    return low.equals(high) ? low : low + " to " + high;
  }

  private static String missing(SegmentLine segment) {
    return segment.hasFaultThatDistortsFigures()
        ? "not computed: mend the results of this segment first"
        : "not computed: a value is missing in the file";
  }

  private static String name(SegmentLine segment, int item) {
    ChainItem at = segment.segment().items().get(item);
    String side = item == 0 ? ", side out" : ", side in";
    return PlainText.name(at) + (at instanceof Repeater ? side : "");
  }
}
