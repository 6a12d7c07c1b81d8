package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import org.headhouse.linter.figures.SegmentLine;
import org.headhouse.linter.figures.Shown;
import org.headhouse.linter.line.IdleVoltage;
import org.headhouse.linter.line.Levels;
import org.headhouse.linter.line.ReceivedVoltage;
import org.headhouse.linter.line.SegmentFigures;
import org.headhouse.linter.line.Traffic;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Site;
import org.headhouse.linter.site.Stage;
import org.jspecify.annotations.Nullable;

/**
 * One site in the index; small, as one is kept for every site.
 *
 * @param customer empty where the file names none
 * @param link to its page; empty where there is none
 * @param id empty where there is none
 * @param state its stage, or that it cannot be read
 * @param nextProof when the whole line is due to be proved again; null where that is not known
 * @param isProofUnknown whether it is commissioned, and the day of its proof is not known
 * @param units empty where they are not known
 * @param idle the margin of the weakest idle voltage; empty where it is not computed
 * @param received the margin of the weakest signal; empty where it is not computed
 * @param use the share of the time that the line is in use; empty where it is not computed
 * @param faults what is wrong, where there is no page that shows it
 */
public record IndexRow(
    String customer,
    String link,
    String title,
    String id,
    String file,
    String state,
    @Nullable LocalDate nextProof,
    boolean isProofUnknown,
    String units,
    int errors,
    int warnings,
    int notes,
    int accepted,
    String idle,
    String received,
    String use,
    List<String> faults) {

  private static final int MOST_FAULTS = 10;

  public IndexRow {
    faults = List.copyOf(faults);
  }

  /** A site with a page. */
  public static IndexRow of(SiteFacts facts, String name) {
    Site site = facts.site();
    Traffic traffic = facts.figures().traffic();
    return new IndexRow(
        PlainText.name(site.customer().or("")),
        PageNames.link(PageNames.page(name)),
        SheetHead.title(site),
        PlainText.name(site.id().or("")),
        PlainText.sentence(site.source().path()),
        site.stage().isGiven() ? PlainText.word(site.stage()) : "stage " + PlainText.NOT_WRITTEN,
        facts.proof().next(),
        site.stage().is(Stage.COMMISSIONED) && facts.proof().day() == null,
        String.valueOf(site.units().size()),
        count(facts.results(), Level.ERROR),
        count(facts.results(), Level.WARNING),
        count(facts.results(), Level.NOTE),
        (int) facts.results().stream().filter(Result::suppressed).count(),
        margin(facts, true),
        margin(facts, false),
        traffic == null ? "" : Shown.percent(traffic.utilisation()),
        List.of());
  }

  /**
   * A file without a page, or faults outside of sites.
   *
   * @param trouble why it could not be read; empty where results say so
   */
  public static IndexRow unread(String file, String state, String trouble, List<Result> results) {
    List<String> faults =
        trouble.isEmpty()
            ? results.stream().limit(MOST_FAULTS).map(TextReport::headline).toList()
            : List.of(trouble);
    return new IndexRow(
        "",
        "",
        PlainText.sentence(file),
        "",
        PlainText.sentence(file),
        state,
        null,
        false,
        "",
        count(results, Level.ERROR),
        count(results, Level.WARNING),
        count(results, Level.NOTE),
        (int) results.stream().filter(Result::suppressed).count(),
        "",
        "",
        "",
        faults.stream().map(PlainText::sentence).toList());
  }

  boolean isOverdue(LocalDate today) {
    return nextProof != null && nextProof.isBefore(today);
  }

  /** The day of the next proof in a table. */
  String shownNextProof() {
    return nextProof != null ? nextProof.toString() : isProofUnknown ? "not known" : "";
  }

  private static int count(List<Result> results, Level level) {
    return (int)
        results.stream().filter(result -> !result.suppressed() && result.level() == level).count();
  }

  /** The smallest over all segments without a fault that distorts the figures. */
  private static String margin(SiteFacts facts, boolean idle) {
    OptionalDouble worst =
        facts.figures().segments().stream()
            .filter(segment -> !segment.hasFaultThatDistortsFigures())
            .flatMapToDouble(segment -> volts(segment, idle).stream())
            .min();
    return worst.isEmpty()
        ? ""
        : worst.getAsDouble() > 0
            ? Shown.decibels(Levels.marginDecibels(worst.getAsDouble()))
            : "wrong sense";
  }

  private static OptionalDouble volts(SegmentLine segment, boolean idle) {
    SegmentFigures figures = segment.figures();
    IdleVoltage lowest = figures == null ? null : figures.lowestIdle();
    ReceivedVoltage weakest = figures == null ? null : figures.weakestReceived();
    if (idle) {
      return lowest == null ? OptionalDouble.empty() : OptionalDouble.of(lowest.volts());
    }
    return weakest == null ? OptionalDouble.empty() : OptionalDouble.of(weakest.volts());
  }
}
