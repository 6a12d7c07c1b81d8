package org.headhouse.linter.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.SegmentNetwork;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.report.sheet.FigureTable.Verdict;
import org.jspecify.annotations.Nullable;

/**
 * One figure of a site in the index, judged as on the sheets of the site.
 *
 * @param shown empty where it is not computed
 */
record IndexFigure(String shown, Verdict verdict) {
  static final IndexFigure UNKNOWN = new IndexFigure("", Verdict.NO_LIMIT);

  /** The words of the verdict; empty where there is none. */
  String words() {
    return verdict == Verdict.NO_LIMIT ? "" : verdict.words();
  }

  /** The worst idle voltage of all segments without a fault that distorts the figures. */
  static IndexFigure idle(List<SegmentLine> segments, SitePolicy policy) {
    List<Judged> all = new ArrayList<>();
    for (SegmentLine line : segments) {
      SegmentFigures figures = line.figures();
      SegmentNetwork network = line.network();
      IdleVoltage lowest = figures == null ? null : figures.lowestIdle();
      if (lowest != null && !line.hasFaultThatDistortsFigures()) {
        IdleVoltage worst =
            network == null || line.holdingBiases().isEmpty() ? null : network.lowestIdleAtWorst();
        all.add(
            Judged.of(
                lowest.volts(), worst == null ? null : worst.volts(), policy.wantedIdleVolts()));
      }
    }
    return worst(all);
  }

  /** The weakest signal of all segments without a fault that distorts the figures. */
  static IndexFigure received(List<SegmentLine> segments, SitePolicy policy) {
    List<Judged> all = new ArrayList<>();
    for (SegmentLine line : segments) {
      SegmentFigures figures = line.figures();
      SegmentNetwork network = line.network();
      ReceivedVoltage weakest = figures == null ? null : figures.weakestReceived();
      if (weakest != null && !line.hasFaultThatDistortsFigures()) {
        ReceivedVoltage worst = network == null ? null : network.weakestReceivedAtWorst();
        all.add(
            Judged.of(
                weakest.volts(), worst == null ? null : worst.volts(), policy.wantedSignalVolts()));
      }
    }
    return worst(all);
  }

  static IndexFigure utilisation(@Nullable Traffic traffic, SitePolicy policy) {
    if (traffic == null) {
      return UNKNOWN;
    }
    double use = traffic.utilisation();
    return new IndexFigure(
        Shown.percent(use), Verdict.of(use <= 1, use <= policy.mostUtilisation()));
  }

  /** A voltage with its nominal value, judged with that at the worst corner of its parts. */
  private record Judged(double volts, Verdict verdict) {
    static Judged of(double nominal, @Nullable Double worst, double wanted) {
      return new Judged(
          nominal,
          Verdict.of(nominal >= Levels.RECEIVER_THRESHOLD_VOLTS, worst == null || worst >= wanted));
    }
  }

  private static IndexFigure worst(List<Judged> all) {
    return all.stream()
        .min(Comparator.comparing(Judged::verdict).thenComparingDouble(Judged::volts))
        .map(
            judged ->
                new IndexFigure(
                    judged.volts() > 0
                        ? Shown.decibels(Levels.marginDecibels(judged.volts()))
                        : "reversed",
                    judged.verdict()))
        .orElse(UNKNOWN);
  }
}
