package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.headhouse.linter.figures.SitePolicy;
import org.headhouse.linter.report.TextReport;
import org.headhouse.linter.result.Level;
import org.headhouse.linter.result.Result;
import org.headhouse.linter.site.Site;
import org.jspecify.annotations.Nullable;

/**
 * One site in the index; small, as one is kept for every site.
 *
 * @param customer empty where the file names none
 * @param link to its page; empty where there is none
 * @param vanLink to its sheet for the van; empty where there is none
 * @param id empty where there is none
 * @param state its stage, and whether it is not proved; or that it cannot be read
 * @param nextProof when the whole line is due to be proved again; null where that is not known
 * @param isUnproved whether it is commissioned, and its certificate does not call it proved
 * @param units empty where they are not known
 * @param idle the margin of the weakest idle voltage
 * @param received the margin of the weakest signal
 * @param use the share of the time that the line is in use
 * @param faults what is wrong, where there is no page that shows it
 */
public record IndexRow(
    String customer,
    String link,
    String vanLink,
    String title,
    String id,
    String file,
    String state,
    @Nullable LocalDate nextProof,
    boolean isUnproved,
    String units,
    int errors,
    int warnings,
    int notes,
    int accepted,
    IndexFigure idle,
    IndexFigure received,
    IndexFigure use,
    List<String> faults) {

  private static final int MOST_FAULTS = 10;

  public IndexRow {
    faults = List.copyOf(faults);
  }

  /** A site with a page. */
  static IndexRow of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    boolean isUnproved = CertificateVerdict.isUnproved(facts, settings);
    SitePolicy policy = settings.policy();
    String stage =
        site.stage().isGiven() ? PlainText.word(site.stage()) : "stage " + PlainText.NOT_WRITTEN;
    return new IndexRow(
        PlainText.name(site.customer().or("")),
        PageNames.link(PageNames.page(name)),
        PageNames.link(PageNames.van(name)),
        SheetHead.title(site),
        PlainText.name(site.id().or("")),
        PlainText.sentence(site.source().path()),
        isUnproved ? stage + ", not proved" : stage,
        isUnproved ? null : facts.proof().next(),
        isUnproved,
        String.valueOf(site.units().size()),
        count(facts.results(), Level.ERROR),
        count(facts.results(), Level.WARNING),
        count(facts.results(), Level.NOTE),
        (int) facts.results().stream().filter(Result::suppressed).count(),
        IndexFigure.idle(facts.figures().segments(), policy),
        IndexFigure.received(facts.figures().segments(), policy),
        IndexFigure.utilisation(facts.figures().traffic(), policy),
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
        IndexFigure.UNKNOWN,
        IndexFigure.UNKNOWN,
        IndexFigure.UNKNOWN,
        faults.stream().map(PlainText::sentence).toList());
  }

  boolean isOverdue(LocalDate today) {
    return isUnproved || (nextProof != null && nextProof.isBefore(today));
  }

  /** The day of the next proof in a table. */
  String shownNextProof() {
    return nextProof != null ? nextProof.toString() : isUnproved ? "now" : "";
  }

  private static int count(List<Result> results, Level level) {
    return (int)
        results.stream().filter(result -> !result.suppressed() && result.level() == level).count();
  }

  /** The worst of its figures. */
  FigureTable.Verdict worst() {
    return Stream.of(idle, received, use)
        .map(IndexFigure::verdict)
        .min(Comparator.naturalOrder())
        .orElseThrow();
  }
}
