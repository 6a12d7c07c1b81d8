package org.headhouse.linter.report.sheet;

import java.time.LocalDate;
import org.headhouse.linter.site.Commissioning;
import org.headhouse.linter.site.ProvingRecord;
import org.headhouse.linter.site.Site;

/**
 * One line of a customer on the cover; small, as one is kept for every site.
 *
 * @param link to its certificate
 * @param heading of its certificate
 * @param isProved whether it counts as proved, with exceptions or without
 * @param last when the record was written last, and by whom; empty where there is none
 * @param due when it is to be proved again
 */
public record CoverRow(
    String link, String title, String heading, boolean isProved, String last, String due) {

  /** The line of a site whose page has a name. */
  public static CoverRow of(SiteFacts facts, String name, SheetSettings settings) {
    Site site = facts.site();
    LocalDate due = facts.proof().next();
    CertificateVerdict verdict = CertificateVerdict.of(facts, settings);
    String later = due == null ? "no day is set" : SpokenText.day(due);
    return new CoverRow(
        PageNames.link(PageNames.certificate(name)),
        SheetHead.title(site),
        verdict.heading().words(),
        verdict.isProved(),
        site.commissioning().optional().map(CoverRow::last).orElse(""),
        verdict.isProved() ? later : "now");
  }

  private static String last(Commissioning commissioning) {
    ProvingRecord last = commissioning.records().get(commissioning.records().size() - 1);
    LocalDate day = last.dayOrNull();
    return (day == null ? "no date" : SpokenText.day(day))
        + ", by "
        + PlainText.name(last.by().or("nobody"));
  }
}
